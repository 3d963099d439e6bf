#include "core/nutrition/way_to_grams.h"

#include <cmath>

#include "core/nutrition/line_context.h"

namespace nettare {

namespace {

/// Most lines have two: one that counts and one beside it.
constexpr std::size_t kUsualWays = 2;

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

/// All ways that are open, best first.
std::optional<Error> open(const LineContext& context, std::vector<OpenWay>& ways) {
    ways.reserve(kUsualWays);
    for (const auto way : {weighedWay, seriesWay})
        if (auto error = take(way(context), ways)) return error;
    // Servings of a label before the content of packs.
    if (auto way = servingsWay(context)) ways.push_back(std::move(*way));
    if (auto error = take(packWay(context), ways)) return error;
    auto table = tableWay(context);
    const bool measured = table.has_value();
    if (table) ways.push_back(std::move(*table));
    if (auto way = statedDensityWay(context)) ways.push_back(std::move(*way));
    if (!measured)
        if (auto way = measureDensityWay(context)) ways.push_back(std::move(*way));
    return take(assumedWay(context), ways);
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
    if (const auto error = open(context, grams.ways)) return fail(placed(*error, context));
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
