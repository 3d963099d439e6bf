#include <cmath>

#include "core/food/piece_word.h"
#include "core/label/household_unit.h"
#include "core/nutrition/label_source.h"
#include "core/nutrition/line_context.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// How many household measures of the label one unit of the line is; nothing where they count
/// different things.
std::optional<double> measuresPerUnit(const Line& line, const LabelFacts& label) {
    const Unit* own = householdUnit(label.householdUnit, MeasureSystem::UsLabel);
    const Unit* asked = line.unit;
    if (asked == nullptr)
        return samePiece(lowerAscii(line.piece), householdPiece(label.householdUnit))
                   ? std::optional{1.0}
                   : std::nullopt;
    // A customary spoon or cup is the label's nominal one; a metric cup is larger.
    if (asked->system == MeasureSystem::UsCustomary)
        asked = findUnit(asked->symbol, MeasureSystem::UsLabel);
    const auto measures = [](const Unit* unit) {
        return unit != nullptr && unit->kind == UnitKind::Volume && !unit->isVague();
    };
    const bool volumes = measures(own) && measures(asked);
    return volumes ? std::optional{asked->factor.value() / own->factor.value()} : std::nullopt;
}

/// One unit of the line by the label: so many of its servings, or millilitres by its density.
std::optional<LinearForm> gramsEach(const LineContext& context, const LabelFacts& label,
                                    WayExplanation& why) {
    if (label.needsDensity()) why.gramsPerMl = label.density->gramsPerMl.value();
    const auto measures =
        label.householdAmount ? measuresPerUnit(context.line, label) : std::nullopt;
    if (measures) {
        why.basis = WayBasis::LabelServings;
        why.measuresPerUnit = *measures / label.householdAmount->middle();
        return servingGrams(label, context.foodIndex).times(why.measuresPerUnit);
    }
    why.basis = WayBasis::LabelDensity;
    const Unit* unit = context.line.unit;
    const bool volume = unit != nullptr && unit->kind == UnitKind::Volume && !unit->isVague();
    if (!volume || !label.needsDensity()) return std::nullopt;
    return labelMillilitres(label, context.foodIndex, unit->factor.value());
}

/// The content of one pack with the last digit that its print shows, in its own unit.
LinearForm declaredContent(const LineContext& context) {
    const Amount& amount = context.line.each->amount;
    LinearForm content{amount.middle()};
    const double width = amount.high().value() - amount.low().value();
    content.depend(rectangle({SourceKind::PackContent, 0, context.number},
                             rectangular(std::hypot(width, lastStepOf(amount)))),
                   1);
    const double spread = context.assumptions().declarationSpread.value();
    if (spread > 0)
        content.depend(rectangle({SourceKind::PackDeclared, 0, context.number},
                                 rectangular(2 * spread * content.value())),
                       1);
    return content;
}

}  // namespace

std::optional<OpenWay> servingsWay(const LineContext& context) {
    if (!context.food.label || context.line.toTaste) return std::nullopt;
    const LabelFacts& label = *context.food.label;
    OpenWay way;
    way.way = Way::Label;
    const auto each = gramsEach(context, label, way.why);
    if (!each) return std::nullopt;
    way.why.count = context.line.amount.middle();
    way.why.gramsEach = each->value();
    way.grams = each->times(amountOf(context.line, context.number));
    fillUp(context, way);
    return way;
}

// What is declared by volume weighs by the food's density.
Result<std::optional<OpenWay>> packWay(const LineContext& context) {
    if (!context.line.each || context.line.toTaste) return std::optional<OpenWay>{};
    const Unit& unit = *context.line.each->unit;
    OpenWay way;
    if (unit.kind == UnitKind::Mass) {
        way.grams = declaredContent(context).times(massOf(1, unit).grams());
    } else {
        auto volume = byDensity(context, {declaredContent(context), &unit});
        if (!volume) return std::optional<OpenWay>{};
        way = std::move(*volume);
    }
    way.way = Way::Label;
    way.why.basis = WayBasis::PackContent;
    way.why.count = context.line.amount.middle();
    way.why.gramsEach = way.grams.value();
    way.grams = way.grams.times(amountOf(context.line, context.number));
    if (const auto error = bringToRow(context, way)) return fail(*error);
    return std::optional{std::move(way)};
}

}  // namespace nettare
