#include "core/support/json.h"

#include <algorithm>

#include "core/support/text.h"

namespace nettare {

Json Json::array() {
    Json json;
    json.value_ = Array{};
    return json;
}

Json Json::object() {
    Json json;
    json.value_ = Object{};
    return json;
}

const Json* Json::find(std::string_view key) const {
    const Object* object = members();
    if (object == nullptr) return nullptr;
    const auto found = std::ranges::lower_bound(*object, key, {}, &JsonMember::key);
    return found != object->end() && found->key == key ? &found->value : nullptr;
}

Json* Json::find(std::string_view key) {
    Object* object = members();
    if (object == nullptr) return nullptr;
    const auto found = std::ranges::lower_bound(*object, key, {}, &JsonMember::key);
    return found != object->end() && found->key == key ? &found->value : nullptr;
}

void Json::remove(std::string_view key) {
    if (members() != nullptr)
        std::erase_if(*members(), [&](const JsonMember& member) { return member.key == key; });
}

bool operator==(const Json& a, const Json& b) {
    return a.value_ == b.value_;
}

Json& Json::set(std::string_view key, Json value) {
    if (members() == nullptr) value_ = Object{};
    Object& object = *members();
    const auto found = std::ranges::lower_bound(object, key, {}, &JsonMember::key);
    if (found != object.end() && found->key == key)
        found->value = std::move(value);
    else
        object.insert(found, JsonMember{std::string{key}, std::move(value)});
    return *this;
}

void Json::append(Json item) {
    if (items() == nullptr) value_ = Array{};
    items()->push_back(std::move(item));
}

std::string pointerTo(std::string_view parent, std::string_view key) {
    // The tilde first, or that of a new "~1" would be escaped as well.
    return std::string{parent} + "/" + replaced(replaced(key, "~", "~0"), "/", "~1");
}

std::string pointerTo(std::string_view parent, std::size_t index) {
    return std::string{parent} + "/" + std::to_string(index);
}

}  // namespace nettare
