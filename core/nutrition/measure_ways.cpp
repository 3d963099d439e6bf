#include <algorithm>
#include <cmath>

#include "core/food/piece_word.h"
#include "core/food/volume_measure.h"
#include "core/nutrition/label_source.h"
#include "core/nutrition/line_context.h"

namespace nettare {

namespace {

/// The measures of the food's table row that fit the line: of that unit, and of the size or
/// preparation the line names if any measure has it.
std::vector<std::size_t> fitting(const LineContext& context, std::vector<std::size_t> measures) {
    const std::vector<HouseholdMeasure>& all = context.food.table->measures;
    const auto keep = [&](auto fits) {
        std::vector<std::size_t> kept;
        std::ranges::copy_if(measures, std::back_inserter(kept),
                             [&](std::size_t i) { return fits(all[i].qualifier); });
        return kept;
    };
    if (!context.line.size.empty())
        return keep([&](const std::string& q) { return q == context.line.size; });
    auto named = keep([&](const std::string& q) {
        return !q.empty() && context.line.preparation.find(q) != std::string::npos;
    });
    if (!named.empty()) return named;
    auto plain = keep([](const std::string& q) { return q.empty(); });
    return plain.empty() ? measures : plain;
}

/// Grams of one unit of a measure, with the published or the assumed spread. A published spread
/// acts like a series of n single measures.
LinearForm gramsOfOne(const LineContext& context, std::size_t index, bool& assumed) {
    const HouseholdMeasure& measure = context.food.table->measures[index];
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
    assumed = true;
    return each;
}

/// The scatter of this line's own measures about the mean of the table's: N s^2.
void dependOnScatter(const LineContext& context, std::size_t index, double measuresPerUnit,
                     LinearForm& grams) {
    const HouseholdMeasure& measure = context.food.table->measures[index];
    if (!measure.standardDeviation || measure.n < 2) return;
    const double s = *measure.standardDeviation / measure.amount;
    const double count = context.line.amount.middle() * measuresPerUnit;
    grams.depend({{SourceKind::MeasureScatter, context.foodIndex, context.number},
                  s * std::sqrt(count),
                  static_cast<double>(measure.n - 1),
                  {SourceKind::MeasureMean, context.foodIndex, static_cast<std::uint32_t>(index)}},
                 1);
}

/// The way by one measure, or by all that fit where the size is not said: their middle, with their
/// range as a rectangle. One unit of the line is `measuresPerUnit` of the measure.
OpenWay byMeasures(const LineContext& context, Way kind, const std::vector<std::size_t>& fits,
                   double measuresPerUnit) {
    OpenWay way;
    way.way = kind;
    way.measure = fits.front();
    const auto gramsEach = [&](std::size_t i) {
        return context.food.table->measures[i].gramsEach();
    };
    const auto [least, most] = std::ranges::minmax_element(fits, {}, gramsEach);
    LinearForm each = gramsOfOne(context, fits.front(), way.spreadAssumed).times(measuresPerUnit);
    if (fits.size() > 1) {
        const double low = gramsEach(*least) * measuresPerUnit;
        const double high = gramsEach(*most) * measuresPerUnit;
        each.add(LinearForm{(low + high) / 2 - each.value()});
        each.depend(ownSource({SourceKind::SizeNotSaid, context.foodIndex, context.number},
                              rectangular(high - low)),
                    1);
        way.sizeNotSaid = true;
    }
    way.grams = gramsFor(context, each);
    dependOnScatter(context, fits.front(), measuresPerUnit, way.grams);
    return way;
}

std::vector<std::size_t> measuresWhere(const Food& food, auto fits) {
    std::vector<std::size_t> found;
    if (!food.table) return found;
    for (std::size_t i = 0; i < food.table->measures.size(); ++i)
        if (fits(food.table->measures[i])) found.push_back(i);
    return found;
}

/// The table's measures of the line's own unit or piece word.
std::vector<std::size_t> tableMeasures(const LineContext& context) {
    const Unit* unit = context.line.unit;
    return fitting(context, measuresWhere(context.food, [&](const auto& measure) {
                       return unit != nullptr ? isMeasuredIn(measure.unit, *unit)
                                              : samePiece(measure.unit, context.line.piece);
                   }));
}

}  // namespace

std::optional<OpenWay> labelWay(const LineContext& context) {
    if (!context.food.label) return std::nullopt;
    const LabelFacts& label = *context.food.label;
    const Unit* own = findUnit(label.householdUnit, MeasureSystem::UsLabel);
    if (own != nullptr && own->isVague()) own = nullptr;
    const Unit* asked = context.line.unit;
    // A customary spoon or cup is the label's nominal one; a metric cup is larger.
    if (asked != nullptr && asked->system == MeasureSystem::UsCustomary)
        asked = findUnit(asked->symbol, MeasureSystem::UsLabel);
    double measuresPerUnit = 1;
    if (asked != nullptr && own != nullptr && asked->kind == UnitKind::Volume &&
        own->kind == UnitKind::Volume)
        measuresPerUnit = asked->factor.value() / own->factor.value();
    else if (asked != nullptr || !samePiece(context.line.piece, label.householdUnit))
        return std::nullopt;
    const double servings = measuresPerUnit / label.householdAmount.middle();
    OpenWay way;
    way.way = Way::Label;
    way.grams = gramsFor(context, servingGrams(label, context.foodIndex).times(servings));
    return way;
}

std::optional<OpenWay> tableWay(const LineContext& context) {
    const auto fits = tableMeasures(context);
    if (fits.empty()) return std::nullopt;
    return byMeasures(context, Way::Table, fits, 1);
}

std::optional<OpenWay> densityWay(const LineContext& context) {
    const Unit* unit = context.line.unit;
    if (unit == nullptr || unit->kind != UnitKind::Volume) return std::nullopt;
    if (!tableMeasures(context).empty()) return std::nullopt;
    auto fits = fitting(context, measuresWhere(context.food, [](const auto& measure) {
                            return volumeOfMeasure(measure.unit).has_value();
                        }));
    if (fits.empty()) return std::nullopt;
    // The largest measure is rounded least.
    const auto millilitres = [&](std::size_t i) {
        return *volumeOfMeasure(context.food.table->measures[i].unit);
    };
    const std::size_t largest = *std::ranges::max_element(fits, {}, millilitres);
    std::erase_if(fits, [&](std::size_t i) { return millilitres(i) != millilitres(largest); });
    return byMeasures(context, Way::Density, fits,
                      volumeOf(1, *unit).millilitres() / millilitres(largest));
}

}  // namespace nettare
