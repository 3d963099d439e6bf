#include "json_edit.h"

#include "core/support/text.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <iterator>

namespace nettare {

namespace {

std::size_t positionOf(std::string_view step) {
    std::size_t position = 0;
    const auto read = std::from_chars(step.data(), step.data() + step.size(), position);
    REQUIRE(read.ptr == step.data() + step.size());
    return position;
}

Json& stepInto(Json& json, std::string_view step) {
    if (Json::Array* items = json.items()) return items->at(positionOf(step));
    REQUIRE(json.members() != nullptr);
    const auto member = std::ranges::find(*json.members(), step, &JsonMember::key);
    REQUIRE(member != json.members()->end());
    return member->value;
}

/// A pointer without its last step, and that step.
std::pair<std::string_view, std::string_view> parentAndStep(std::string_view pointer) {
    const std::size_t slash = pointer.rfind('/');
    REQUIRE(slash != std::string_view::npos);
    return {pointer.substr(0, slash), pointer.substr(slash + 1)};
}

}  // namespace

Json jsonOf(std::string_view text) {
    const auto json = parseJson(text);
    INFO("JSON: " << text);
    REQUIRE(json);
    return *json;
}

std::string fileText(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    INFO("file: " << path);
    REQUIRE(file);
    return {std::istreambuf_iterator<char>{file}, {}};
}

Json& partAt(Json& document, std::string_view pointer) {
    INFO("pointer: " << pointer);
    Json* part = &document;
    const auto steps = split(pointer, '/');
    for (std::size_t i = 1; i < steps.size(); ++i) part = &stepInto(*part, steps[i]);
    return *part;
}

Json with(Json document, std::string_view pointer, Json value) {
    const auto [place, step] = parentAndStep(pointer);
    Json& parent = partAt(document, place);
    if (parent.items() == nullptr)
        parent.set(step, std::move(value));
    else if (step == "-")
        parent.append(std::move(value));
    else
        stepInto(parent, step) = std::move(value);
    return document;
}

Json without(Json document, std::string_view pointer) {
    const auto [place, step] = parentAndStep(pointer);
    Json& parent = partAt(document, place);
    if (Json::Array* items = parent.items()) {
        items->erase(items->begin() + static_cast<std::ptrdiff_t>(positionOf(step)));
    } else {
        const auto member = std::ranges::find(*parent.members(), step, &JsonMember::key);
        REQUIRE(member != parent.members()->end());
        parent.members()->erase(member);
    }
    return document;
}

}  // namespace nettare
