#include "core/publish/left_out.h"

#include <algorithm>
#include <tuple>

namespace nettare {

namespace {

const Recipe& recipeOf(const Dossier& dossier, const OpenLine& open) {
    return dossier.recipes[open.number / 65536];
}

const Line& lineOf(const Dossier& dossier, const OpenLine& open) {
    return recipeOf(dossier, open).lines[open.number % 65536];
}

/// A food of which the component is known to be zero takes nothing of it away.
bool mayHold(const Line& line, const Cooked& cooked, Component component) {
    const auto* food = std::get_if<FoodIndex>(&line.what);
    if (food == nullptr) return true;
    const ComponentAmount& amount = cooked.compositions[food->index][component];
    return amount.origin == Origin::Missing || amount.perGram > 0;
}

std::vector<UncountedLine> sorted(std::vector<UncountedLine> lines) {
    std::ranges::sort(lines, {}, [](const UncountedLine& line) {
        return std::tuple<const std::string&, std::string_view>{line.name, line.reason};
    });
    return lines;
}

UncountedLine uncounted(const Dossier& dossier, const OpenLine& open) {
    const std::string& name = lineOf(dossier, open).name;
    return {open.number < 65536 ? name : recipeOf(dossier, open).title + ", " + name,
            reasonOf(open.counting), isLeftOut(open.counting)};
}

}  // namespace

std::string UncountedLine::text() const {
    return name + " (" + std::string{reason} + ")";
}

std::vector<UncountedLine> uncountedLines(const Dossier& dossier, const Cooked& cooked) {
    std::vector<UncountedLine> lines;
    for (const OpenLine& open : cooked.eaten.open) lines.push_back(uncounted(dossier, open));
    return sorted(std::move(lines));
}

std::vector<UncountedLine> uncountedLines(const Dossier& dossier, const Cooked& cooked,
                                          Component component) {
    std::vector<UncountedLine> lines;
    for (const OpenLine& open : cooked.eaten.open)
        if (mayHold(lineOf(dossier, open), cooked, component))
            lines.push_back(uncounted(dossier, open));
    return sorted(std::move(lines));
}

std::string withoutText(const std::vector<UncountedLine>& lines) {
    std::string text;
    for (const UncountedLine& line : lines)
        if (line.leftOut) text += (text.empty() ? "without: " : ", ") + line.text();
    return text;
}

Json withoutJson(const std::vector<UncountedLine>& lines) {
    Json all = Json::array();
    for (const UncountedLine& line : lines) {
        if (!line.leftOut) continue;
        Json json = Json::object();
        all.append(json.set("food", Json{line.name}).set("why", Json{line.reason}));
    }
    return all;
}

}  // namespace nettare
