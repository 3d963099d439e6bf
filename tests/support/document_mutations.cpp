#include "document_mutations.h"

#include "json_edit.h"
#include "odd_texts.h"

#include <array>
#include <functional>

namespace nettare {

namespace {

/// Members of which exactly one may be there, each with a value that would do.
struct Choice {
    std::string_view key{}, value{};
};

using Choices = std::vector<Choice>;

const std::array<Choices, 7>& allChoices() {
    static const std::array<Choices, 7> kChoices{{
        {{"unit", R"("g")"}, {"piece", R"("apple")"}},
        {{"tare", R"("zero")"}, {"vessel", R"("steel-bowl")"}},
        {{"pieces", R"("2")"}, {"grams", R"("120")"}},
        {{"at_most", R"("9")"}, {"at_least", R"("9")"}},
        {{"line", R"("quark")"},
         {"mixture", R"(["quark"])"},
         {"drip", R"("quark")"},
         {"unknown", "true"},
         {"water", "true"},
         {"not_eaten", "true"}},
        {{"stated", R"([{"component":"NA","per_100g":"1","reason":"x"}])"},
         {"table", R"({"table":"t","release":"1","number":"2"})"},
         {"recipe", R"("a.json")"}},
        {{"readings", R"(["left"])"},
         {"of", R"("apple")"},
         {"pairs", R"([{"before":"a","after":"b"}])"}},
    }};
    return kChoices;
}

std::string lastStep(const std::string& pointer) {
    return pointer.substr(pointer.rfind('/') + 1);
}

void collectPlaces(const Json& json, const std::string& pointer,
                   const std::function<void(const Json&, const std::string&, bool)>& visit) {
    if (const Json::Object* members = json.members())
        for (const JsonMember& member : *members) {
            const std::string place = pointerTo(pointer, std::string_view{member.key});
            visit(member.value, place, true);
            collectPlaces(member.value, place, visit);
        }
    if (const Json::Array* items = json.items())
        for (std::size_t i = 0; i < items->size(); ++i) {
            const std::string place = pointerTo(pointer, i);
            visit((*items)[i], place, false);
            collectPlaces((*items)[i], place, visit);
        }
}

}  // namespace

DocumentMutator::DocumentMutator(Json base, std::mt19937::result_type seed)
    : base_{std::move(base)}, random_{seed}, objects_{""} {
    collectPlaces(base_, "", [this](const Json& part, const std::string& place, bool isMember) {
        if (isMember) members_.push_back(place);
        if (part.text() != nullptr) texts_.push_back(place);
        if (part.items() != nullptr) lists_.push_back(place);
        if (part.members() != nullptr) objects_.push_back(place);
    });
}

const std::string& DocumentMutator::anyPlace(const std::vector<std::string>& places) {
    return places[below(places.size())];
}

Json DocumentMutator::anyValue() {
    static constexpr std::array<std::string_view, 12> kValues{
        "null",  "true",   "false", "0",        "1",  "-1.5",
        R"("")", R"("1")", "[]",    R"(["a"])", "{}", R"({"id":"a"})"};
    return jsonOf(kValues[below(kValues.size())]);
}

MutatedDocument DocumentMutator::dropMember() {
    const std::string& place = anyPlace(members_);
    return {"dropped " + place, without(base_, place)};
}

MutatedDocument DocumentMutator::renameKey() {
    const std::string& place = anyPlace(members_);
    const std::string key = lastStep(place);
    const std::string name = below(2) == 0 ? key + "s" : lastStep(anyPlace(members_));
    const Json value = partAt(base_, place);
    const std::string parent = place.substr(0, place.size() - key.size());
    return {"renamed " + place + " to " + name, with(without(base_, place), parent + name, value)};
}

MutatedDocument DocumentMutator::addMember() {
    const std::string& object = anyPlace(objects_);
    const std::string& from = anyPlace(members_);
    if (below(4) == 0) {
        const Json value = anyValue();
        return {"added an unknown member to " + object + ": " + writeJson(value),
                with(base_, object + "/surprise", value)};
    }
    return {"copied " + from + " into " + object,
            with(base_, object + "/" + lastStep(from), partAt(base_, from))};
}

MutatedDocument DocumentMutator::changeKind() {
    const std::string& place = anyPlace(members_);
    const Json value = anyValue();
    return {place + " became " + writeJson(value), with(base_, place, value)};
}

MutatedDocument DocumentMutator::replaceText() {
    const std::string& place = anyPlace(texts_);
    const std::string text = oddText(*partAt(base_, place).text(), random_);
    const Json value{text};
    return {place + " became " + writeJson(value), with(base_, place, value)};
}

MutatedDocument DocumentMutator::changeList() {
    const std::string& place = anyPlace(lists_);
    static constexpr std::array<std::size_t, 10> kSizes{0, 0, 1, 1, 2, 2, 3, 41, 42, 500};
    const Json::Array& items = *partAt(base_, place).items();
    std::size_t size = kSizes[below(kSizes.size())];
    // Hundreds of whole objects take the schema long, so they are tried less often.
    if (size == 500 && (items.front().text() != nullptr || below(4) == 0))
        size += below(2);
    else if (size == 500)
        size = 2;
    Json list = Json::array();
    for (std::size_t i = 0; i < size; ++i) list.append(items[i % items.size()]);
    return {place + " has " + std::to_string(size) + " items", with(base_, place, list)};
}

MutatedDocument DocumentMutator::swapParts() {
    const bool whole = below(2) == 0;
    const std::string& a = anyPlace(whole ? objects_ : members_);
    const std::string& b = anyPlace(whole ? objects_ : members_);
    if (a.starts_with(b) || b.starts_with(a)) return dropMember();
    const Json first = partAt(base_, a);
    return {"swapped " + a + " and " + b, with(with(base_, a, partAt(base_, b)), b, first)};
}

MutatedDocument DocumentMutator::breakChoice() {
    std::string object;
    Choice is, other;
    do {
        object = anyPlace(objects_);
        const Choices& choices = allChoices()[below(allChoices().size())];
        is = choices[below(choices.size())];
        other = choices[below(choices.size())];
    } while (partAt(base_, object).find(is.key) == nullptr);
    const std::string place = object + "/" + std::string{is.key};
    const std::string second = object + "/" + std::string{other.key};
    const Json value = jsonOf(other.value);
    switch (below(4)) {
        case 0:
            return {"dropped the choice " + place, without(base_, place)};
        case 1:
            return {"both " + place + " and " + second, with(base_, second, value)};
        default:
            return {place + " gave way to " + second, with(without(base_, place), second, value)};
    }
}

MutatedDocument DocumentMutator::next() {
    switch (below(12)) {
        case 0:
        case 1:
            return dropMember();
        case 2:
            return renameKey();
        case 3:
            return addMember();
        case 4:
            return changeKind();
        case 5:
            return changeList();
        case 6:
            return swapParts();
        case 7:
            return breakChoice();
        default:
            return replaceText();
    }
}

}  // namespace nettare
