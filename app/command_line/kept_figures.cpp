#include "app/command_line/kept_figures.h"

#include <fmt/core.h>

#include <limits>
#include <optional>

#include "core/publish/figures_json.h"
#include "core/publish/figures_record.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// The figures that were kept for a basis; none where it had none.
const Json::Array& keptOf(const KeptFigures& kept, Basis basis) {
    static const Json::Array kNone;
    const Json* bases = kept.figures.find("bases");
    if (bases == nullptr || bases->items() == nullptr) return kNone;
    for (const Json& one : *bases->items()) {
        const Json* name = one.find("basis");
        const Json* figures = one.find("figures");
        if (name != nullptr && *name == Json{nameOf(basis)} && figures != nullptr &&
            figures->items() != nullptr)
            return *figures->items();
    }
    return kNone;
}

std::optional<double> numberIn(const Json& json, std::string_view key) {
    const Json* member = json.find(key);
    const double* number = member == nullptr ? nullptr : member->number();
    return number == nullptr ? std::nullopt : std::optional<double>{*number};
}

std::optional<Figure> figureFrom(const Json& json) {
    const Json* name = json.find("component");
    const auto component =
        name != nullptr && name->text() != nullptr ? componentNamed(*name->text()) : std::nullopt;
    const auto value = numberIn(json, "value");
    if (!component || !value) return std::nullopt;
    Figure figure;
    figure.component = *component;
    figure.value = *value;
    figure.u = numberIn(json, "u").value_or(0);
    figure.freedom = numberIn(json, "nu").value_or(std::numeric_limits<double>::infinity());
    figure.atLeast = numberIn(json, "at_least").value_or(*value);
    figure.atMost = numberIn(json, "at_most");
    // Which foods were missing is not kept; that some were shows in the bounds.
    if (figure.atMost != figure.atLeast) figure.missingFoods = {0};
    return figure;
}

bool isSame(const Figure& kept, const Figure& today) {
    return kept.value == today.value && kept.u == today.u && kept.freedom == today.freedom &&
           kept.atLeast == today.atLeast && kept.atMost == today.atMost;
}

Json withArithmetic(const KeptFigures& kept, Json figures) {
    Json json = Json::object();
    json.set("arithmetic", Json{static_cast<double>(kept.arithmetic)});
    return std::move(json.set("figures", std::move(figures)));
}

/// The digits that are not printed are written where nothing else tells the two apart.
std::string both(const Figure& kept, const Figure& today) {
    const std::string before = figureText(kept);
    const std::string now = figureText(today);
    if (before != now) return "kept " + before + ", today " + now;
    return "kept and today " + now + ", unrounded " + numberText(kept.value) + " and " +
           numberText(today.value);
}

}  // namespace

std::optional<Figure> keptFigure(const KeptFigures& kept, Basis basis, Component component) {
    for (const Json& json : keptOf(kept, basis))
        if (auto figure = figureFrom(json); figure && figure->component == component) return figure;
    return std::nullopt;
}

bool differFromToday(const KeptFigures& kept, const Dossier& dossier, const Cooked& cooked) {
    return kept.arithmetic != kArithmeticVersion ||
           !(kept.figures == figuresRecord(dossier, cooked));
}

std::string keptBesideToday(const KeptFigures& kept, const Figures& today) {
    std::string rows;
    for (const Json& json : keptOf(kept, today.basis)) {
        const auto figure = figureFrom(json);
        if (!figure || isSame(*figure, today[figure->component])) continue;
        rows += fmt::format("  {}: {}\n", factsOf(figure->component).name,
                            both(*figure, today[figure->component]));
    }
    if (rows.empty()) rows = "  none\n";
    return fmt::format("\nWhere kept figures (arithmetic {}) differ from today's (arithmetic {})\n",
                       kept.arithmetic, kArithmeticVersion) +
           rows;
}

Json keptJson(const KeptFigures& kept, Basis basis) {
    Json figures = Json::array();
    for (const Json& figure : keptOf(kept, basis)) figures.append(figure);
    return withArithmetic(kept, std::move(figures));
}

Json keptOtherwise(const KeptFigures& kept, const Figures& today) {
    Json figures = Json::array();
    for (const Json& json : keptOf(kept, today.basis)) {
        const auto figure = figureFrom(json);
        if (!figure || !isSame(*figure, today[figure->component])) figures.append(json);
    }
    return withArithmetic(kept, std::move(figures));
}

}  // namespace nettare
