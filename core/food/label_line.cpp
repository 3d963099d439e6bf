#include "core/food/label_line.h"

#include <array>

namespace nettare {

namespace {

struct LabelOnlyFacts {
    LabelOnly line;
    std::string_view tagname, name;
};

constexpr std::array<LabelOnlyFacts, 4> kLabelOnly{{
    {LabelOnly::NACL, "NACL", "salt"},
    {LabelOnly::CHOAVL, "CHOAVL", "carbohydrate without fibre"},
    {LabelOnly::POLYL, "POLYL", "polyols"},
    {LabelOnly::STARCH, "STARCH", "starch"},
}};

const LabelOnlyFacts* onlyFacts(const LabelLine& line) {
    const auto* only = std::get_if<LabelOnly>(&line);
    return only != nullptr ? &kLabelOnly.at(static_cast<std::size_t>(*only)) : nullptr;
}

}  // namespace

std::optional<Component> componentOf(const LabelLine& line) {
    const auto* component = std::get_if<Component>(&line);
    return component != nullptr ? std::optional{*component} : std::nullopt;
}

std::string_view tagnameOf(const LabelLine& line) {
    const auto* only = onlyFacts(line);
    return only != nullptr ? only->tagname : factsOf(std::get<Component>(line)).tagname;
}

std::string_view unitOf(const LabelLine& line) {
    return onlyFacts(line) != nullptr ? "g" : factsOf(std::get<Component>(line)).unit;
}

std::string_view nameOf(const LabelLine& line) {
    const auto* only = onlyFacts(line);
    return only != nullptr ? only->name : factsOf(std::get<Component>(line)).name;
}

std::optional<LabelLine> labelLineNamed(std::string_view tagname) {
    for (const LabelOnlyFacts& facts : kLabelOnly)
        if (facts.tagname == tagname) return LabelLine{facts.line};
    if (const auto component = componentNamed(tagname)) return LabelLine{*component};
    return std::nullopt;
}

}  // namespace nettare
