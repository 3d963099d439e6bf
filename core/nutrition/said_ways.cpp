#include "core/nutrition/line_context.h"
#include "core/nutrition/size_of_thing.h"

namespace nettare {

namespace {

/// Grams that the cook assumes, with a half-width and a reason.
OpenWay cooksGrams(const LineContext& context) {
    const AssumedGrams& assumed = *context.line.assumed;
    OpenWay way;
    way.why.basis = WayBasis::CooksGrams;
    way.grams = LinearForm{assumed.grams.value()};
    way.grams.depend(rectangle({SourceKind::Assumed, 0, context.number},
                               rectangular(2 * assumed.within.value())),
                     1);
    way.spreadAssumed = true;
    return way;
}

/// Sticks are counted; what their packs declare ("113 g") is rounded to the gram.
OpenWay sticks(const LineContext& context, const Amount& amount, const Unit& unit) {
    LinearForm each{massOf(1, unit).grams()};
    each.depend(rectangle({SourceKind::PackContent, 0, context.number}, rectangular(1)), 1);
    OpenWay way;
    way.why.gramsEach = each.value();
    way.grams = each.times(amountOf(amount, context.number));
    return way;
}

/// Grams of an amount as it was written, a volume by what the food's own measures say.
std::optional<OpenWay> asWritten(const LineContext& context, const Amount& amount,
                                 const Unit& unit) {
    if (isStick(unit)) return sticks(context, amount, unit);
    LinearForm written = writtenAmount(amount, context.number);
    if (unit.kind == UnitKind::Mass) {
        OpenWay way;
        way.grams = written.times(massOf(1, unit).grams());
        return way;
    }
    const Asked asked{std::move(written), &unit};
    auto way = byTable(context, asked);
    return way ? way : byDensity(context, asked);
}

/// A pinch, or butter the size of a walnut: a vague volume by the food's density.
std::optional<OpenWay> vagueMeasure(const LineContext& context) {
    const Unit* unit = context.line.unit;
    if (unit == nullptr) unit = sizeOfThing(context.line);
    if (unit == nullptr || !unit->isVague()) return std::nullopt;
    auto way = byDensity(context, {amountOf(context.line, context.number), unit});
    if (!way) return std::nullopt;
    LinearForm vague{1};
    way->why.vagueness = unit->vagueness.value();
    vague.depend(rectangle({SourceKind::VagueUnit, 0, context.number},
                           rectangular(2 * unit->vagueness.value())),
                 1);
    way->grams = way->grams.times(vague);
    way->why.basis = WayBasis::MannerOfSpeech;
    way->spreadAssumed = true;
    return way;
}

/// The weight as written, else the amount said again.
std::optional<OpenWay> saidWeight(const LineContext& context) {
    const Line& line = context.line;
    if (line.unit != nullptr && line.unit->kind == UnitKind::Mass) {
        auto way = asWritten(context, line.amount, *line.unit);
        way->why.basis = WayBasis::Written;
        return way;
    }
    if (!line.equals) return std::nullopt;
    auto way = asWritten(context, line.equals->amount, *line.equals->unit);
    if (way) way->why.basis = WayBasis::SaidAgain;
    return way;
}

}  // namespace

// Grams that the cook assumes win over a weight as written, which says what should be weighed; that
// wins over a manner of speech.
Result<std::optional<OpenWay>> assumedWay(const LineContext& context) {
    if (context.line.assumed) return std::optional{cooksGrams(context)};
    if (context.line.toTaste) return std::optional<OpenWay>{};
    auto way = saidWeight(context);
    if (!way) way = vagueMeasure(context);
    if (!way) return std::optional<OpenWay>{};
    way->way = Way::Assumed;
    way->why.count = context.line.amount.middle();
    if (way->why.basis == WayBasis::MannerOfSpeech) return way;
    if (const auto error = bringToRow(context, *way)) return fail(*error);
    return way;
}

}  // namespace nettare
