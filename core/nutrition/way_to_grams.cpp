#include "core/nutrition/way_to_grams.h"

#include <cmath>

#include "core/nutrition/line_context.h"

namespace nettare {

namespace {

/// Appends the way if it is open; answers the error if the line is wrong.
std::optional<Error> take(Result<std::optional<OpenWay>> way, std::vector<OpenWay>& ways) {
    if (!way) return way.error();
    if (*way) ways.push_back(std::move(**way));
    return std::nullopt;
}

/// An error of one line with its file, its pointer and the names that its sentence quotes.
Error placed(Error error, const LineContext& context) {
    if (error.pointer.empty()) error.pointer = context.line.pointer;
    error.file = context.recipe.file;
    return error.with("line", context.line.id).with("food", context.line.name);
}

/// What the line counts, in its own word.
std::string unitText(const Line& line) {
    return line.unit != nullptr ? std::string{line.unit->symbol} : line.piece;
}

}  // namespace

Result<LineGrams> waysToGrams(const Dossier& dossier, std::size_t recipeIndex,
                              std::size_t lineIndex) {
    const Recipe& recipe = dossier.recipes[recipeIndex];
    const Line& line = recipe.lines[lineIndex];
    const std::size_t food = std::get<FoodIndex>(line.what).index;
    const LineContext context{dossier,
                              recipe,
                              line,
                              dossier.foods[food],
                              static_cast<std::uint32_t>(food),
                              numberOf(recipeIndex, lineIndex)};
    LineGrams grams;
    for (const auto way : {weighedWay, seriesWay})
        if (const auto error = take(way(context), grams.ways)) return fail(placed(*error, context));
    for (const auto way : {labelWay, tableWay, densityWay})
        if (auto open = way(context)) grams.ways.push_back(std::move(*open));
    if (const auto error = take(assumedWay(context), grams.ways))
        return fail(placed(*error, context));
    if (grams.ways.empty())
        return fail(placed(Error{ErrorCode::NoWayToGrams}.with("unit", unitText(line)), context));
    if (!line.way) return grams;
    while (grams.chosen < grams.ways.size() && grams.way().way != *line.way) ++grams.chosen;
    if (grams.chosen == grams.ways.size())
        return fail(placed(Error{ErrorCode::WayNotOpen}.with("found", nameOf(*line.way)), context));
    return grams;
}

// Subtracted as linear forms: two ways that rest on the same reading or measure do not disagree by
// it.
Disagreement disagreement(const OpenWay& chosen, const OpenWay& alternative) {
    LinearForm difference = alternative.grams;
    difference.add(chosen.grams, -1);
    const double size = chosen.grams.value();
    return {size == 0 ? 0 : difference.value() / size,
            std::fabs(difference.value()) > 2 * difference.uncertainty()};
}

}  // namespace nettare
