#include <algorithm>
#include <cmath>

#include "core/food/measure_scaling.h"
#include "core/food/piece_word.h"
#include "core/food/volume_measure.h"
#include "core/nutrition/line_context.h"
#include "core/nutrition/measure_fit.h"

namespace nettare {

namespace {

const HouseholdMeasure& measureAt(const LineContext& context, std::size_t index) {
    return context.food.table->measures[index];
}

/// Grams of one unit of a measure, with the published or the assumed spread. A published spread
/// acts like a series of n single measures.
LinearForm gramsOfOne(const LineContext& context, std::size_t index, OpenWay& way) {
    const HouseholdMeasure& measure = measureAt(context, index);
    const auto number = static_cast<std::uint32_t>(index);
    LinearForm each{measure.gramsEach()};
    if (measure.standardDeviation && measure.n >= 2) {
        const double s = *measure.standardDeviation / measure.amount;
        each.depend(ownSource({SourceKind::MeasureMean, context.foodIndex, number},
                              s / std::sqrt(static_cast<double>(measure.n)), measure.n - 1),
                    1);
        return each;
    }
    const Assumptions& assumptions = context.assumptions();
    const Decimal relative =
        volumeOfMeasure(measure.unit) ? assumptions.volumeSpread : assumptions.pieceSpread;
    each.depend(ownSource({SourceKind::MeasureAssumed, context.foodIndex, number},
                          relative.value() * each.value(), assumptions.spreadFreedom.value()),
                1);
    way.spreadAssumed = true;
    way.why.spreadAssumed = relative.value();
    return each;
}

/// The scatter of this line's own measures about the mean of the table's: N s^2.
void dependOnScatter(const LineContext& context, std::size_t index, double measures,
                     LinearForm& grams) {
    const HouseholdMeasure& measure = measureAt(context, index);
    if (!measure.standardDeviation || measure.n < 2) return;
    const double s = *measure.standardDeviation / measure.amount;
    grams.depend(
        scatter({SourceKind::MeasureScatter, context.foodIndex, context.number},
                s * std::sqrt(measures), static_cast<double>(measure.n - 1),
                {SourceKind::MeasureMean, context.foodIndex, static_cast<std::uint32_t>(index)}),
        1);
}

/// The way by one measure, or by all that fit where the size is not said: their middle, with their
/// range as a rectangle. One unit asked for is `measuresPerUnit` of the measure.
OpenWay byMeasures(const LineContext& context, const Asked& asked, const MeasureFit& fit,
                   double measuresPerUnit) {
    OpenWay way;
    const std::size_t first = fit.measures.front();
    way.measure = first;
    way.sizeNotSaid = fit.sizeNotSaid;
    const auto gramsEach = [&](std::size_t i) { return measureAt(context, i).gramsEach(); };
    LinearForm each = gramsOfOne(context, first, way).times(measuresPerUnit);
    if (fit.measures.size() > 1) {
        const auto [least, most] = std::ranges::minmax_element(fit.measures, {}, gramsEach);
        const Interval sizes{gramsEach(*least) * measuresPerUnit,
                             gramsEach(*most) * measuresPerUnit};
        each.add(LinearForm{sizes.middle() - each.value()});
        each.depend(rectangle({SourceKind::SizeNotSaid, context.foodIndex, context.number},
                              rectangular(sizes.width())),
                    1);
        way.why.sizes = sizes;
    }
    way.why.count = asked.amount.value();
    way.why.gramsEach = each.value();
    way.why.measuresPerUnit = measuresPerUnit;
    way.grams = each.times(asked.amount);
    dependOnScatter(context, first, asked.amount.value() * measuresPerUnit, way.grams);
    return way;
}

std::vector<std::size_t> measuresWhere(const Food& food, auto fits) {
    std::vector<std::size_t> found;
    if (!food.table) return found;
    for (std::size_t i = 0; i < food.table->measures.size(); ++i)
        if (fits(food.table->measures[i])) found.push_back(i);
    return found;
}

/// The table's measures of that very unit, or of the line's piece word: of "large egg" not the
/// extra large one. A stick of butter is a unit of its own.
std::vector<std::size_t> countedMeasures(const LineContext& context, const Unit* unit) {
    if (unit != nullptr)
        return measuresWhere(context.food, [&](const auto& measure) {
            return isMeasuredIn(measure.unit, *unit) ||
                   (isStick(*unit) && measure.unit == unit->symbol);
        });
    const std::string piece = singularOf(context.line.piece);
    if (context.line.size.empty()) {
        auto named = measuresWhere(context.food,
                                   [&](const auto& measure) { return isPiece(measure, piece); });
        if (!named.empty()) return named;
    }
    const auto endingIn = [&](std::string_view word) {
        return measuresWhere(context.food,
                             [&](const auto& measure) { return endsInPiece(measure, word); });
    };
    auto whole = endingIn(piece);
    const std::size_t space = piece.rfind(' ');
    if (!whole.empty() || space == std::string::npos) return whole;
    // "whole egg" of a row that counts large eggs: the last word is the thing.
    return endingIn(std::string_view{piece}.substr(space + 1));
}

MeasureFit tableMeasures(const LineContext& context, const Asked& asked) {
    if (!context.food.table) return {};
    return fittingMeasures(context.line, *context.food.table, countedMeasures(context, asked.unit),
                           asked.amount.value());
}

/// Whether any measure that fits the same description says another weight.
bool disagrees(const LineContext& context, std::size_t index) {
    return std::ranges::any_of(context.food.table->measures, [&](const HouseholdMeasure& other) {
        return !scaleAlike(measureAt(context, index), other);
    });
}

double millilitresOf(const HouseholdMeasure& measure) {
    return *volumeOfMeasure(measure.unit) * measure.amount;
}

/// Of measures that scale alike the largest counts, since it is rounded least; of those that do not
/// the one nearest to what is asked for.
std::size_t densityMeasure(const LineContext& context, const std::vector<std::size_t>& fits,
                           double asked) {
    const auto size = [&](std::size_t i) { return millilitresOf(measureAt(context, i)); };
    const std::size_t largest = *std::ranges::max_element(fits, {}, size);
    if (!disagrees(context, largest)) return largest;
    return *std::ranges::min_element(
        fits, {}, [&](std::size_t i) { return std::fabs(std::log(size(i) / asked)); });
}

}  // namespace

std::optional<OpenWay> byTable(const LineContext& context, const Asked& asked) {
    const MeasureFit fit = tableMeasures(context, asked);
    if (fit.measures.empty()) return std::nullopt;
    OpenWay way = byMeasures(context, asked, fit, 1);
    way.way = Way::Table;
    way.why.basis = WayBasis::TableMeasure;
    way.why.measuresDisagree = disagrees(context, *way.measure);
    return way;
}

std::optional<OpenWay> byMeasureDensity(const LineContext& context, const Asked& asked) {
    if (asked.unit == nullptr || asked.unit->kind != UnitKind::Volume || !context.food.table)
        return std::nullopt;
    const double millilitres = volumeOf(1, *asked.unit).millilitres();
    MeasureFit fit = fittingMeasures(
        context.line, *context.food.table,
        measuresWhere(
            context.food,
            [](const auto& measure) { return volumeOfMeasure(measure.unit).has_value(); }),
        std::nullopt);
    if (fit.measures.empty()) return std::nullopt;
    const std::size_t chosen =
        densityMeasure(context, fit.measures, millilitres * asked.amount.value());
    const HouseholdMeasure& measure = measureAt(context, chosen);
    std::erase_if(fit.measures, [&](std::size_t i) {
        return millilitresOf(measureAt(context, i)) != millilitresOf(measure);
    });
    fit.sizeNotSaid = fit.measures.size() > 1;
    OpenWay way = byMeasures(context, asked, fit, millilitres / *volumeOfMeasure(measure.unit));
    way.way = Way::Density;
    way.why.basis = WayBasis::MeasureDensity;
    way.why.gramsPerMl = way.why.gramsEach / millilitres;
    way.why.measuresDisagree = disagrees(context, chosen);
    return way;
}

}  // namespace nettare
