#include "core/nutrition/fill_factor.h"
#include "core/nutrition/line_context.h"

namespace nettare {

namespace {

/// Lines of one food that state the same density state one fact: they share its source.
std::uint32_t firstThatStates(const LineContext& context) {
    const StatedDensity& stated = *context.line.density;
    const std::vector<Line>& lines = context.recipe.lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto* food = std::get_if<FoodIndex>(&lines[i].what);
        if (food != nullptr && food->index == context.foodIndex && lines[i].density &&
            lines[i].density->gramsPerMl == stated.gramsPerMl &&
            lines[i].density->within == stated.within)
            return context.number / 65536 * 65536 + static_cast<std::uint32_t>(i);
    }
    return context.number;
}

/// A vague unit by density is a manner of speech: assumedWay() has it.
bool measuresVolume(const Line& line) {
    return !line.toTaste && line.unit != nullptr && !line.unit->isVague();
}

}  // namespace

std::optional<OpenWay> byStatedDensity(const LineContext& context, const Asked& asked) {
    if (asked.unit == nullptr || asked.unit->kind != UnitKind::Volume || !context.line.density)
        return std::nullopt;
    const StatedDensity& stated = *context.line.density;
    const double millilitres = volumeOf(1, *asked.unit).millilitres();
    LinearForm density{stated.gramsPerMl.value()};
    density.depend(
        rectangle({SourceKind::DensityStated, context.foodIndex, firstThatStates(context)},
                  rectangular(2 * stated.within.value())),
        1);
    OpenWay way;
    way.way = Way::Density;
    way.why.basis = WayBasis::StatedDensity;
    way.why.count = asked.amount.value();
    way.why.gramsPerMl = density.value();
    way.why.gramsEach = density.value() * millilitres;
    way.grams = density.times(millilitres).times(asked.amount);
    return way;
}

std::optional<OpenWay> byDensity(const LineContext& context, const Asked& asked) {
    auto way = byStatedDensity(context, asked);
    return way ? way : byMeasureDensity(context, asked);
}

void fillUp(const LineContext& context, OpenWay& way) {
    const Unit* unit = context.line.unit;
    if (!context.line.fill || unit == nullptr || !isSpoonOrCup(*unit)) return;
    const Interval range = fillFactor(*context.line.fill);
    if (range.width() == 0) return;
    LinearForm factor{range.middle()};
    factor.depend(rectangle({SourceKind::Filling, 0, context.number}, rectangular(range.width())),
                  1);
    way.grams = way.grams.times(factor);
    way.why.fill = range;
    way.spreadAssumed = true;
}

std::optional<OpenWay> tableWay(const LineContext& context) {
    if (context.line.toTaste) return std::nullopt;
    auto way = byTable(context, context.asked());
    if (way) fillUp(context, *way);
    return way;
}

std::optional<OpenWay> statedDensityWay(const LineContext& context) {
    if (!measuresVolume(context.line)) return std::nullopt;
    auto way = byStatedDensity(context, context.asked());
    if (way) fillUp(context, *way);
    return way;
}

std::optional<OpenWay> measureDensityWay(const LineContext& context) {
    if (!measuresVolume(context.line)) return std::nullopt;
    auto way = byMeasureDensity(context, context.asked());
    if (way) fillUp(context, *way);
    return way;
}

}  // namespace nettare
