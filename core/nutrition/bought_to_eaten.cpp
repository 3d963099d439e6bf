#include <cmath>

#include "core/nutrition/line_context.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

std::uint32_t seriesKey(std::size_t index) {
    return static_cast<std::uint32_t>(index);
}

/// What was before over what came after, each with what its readings have in common.
struct Lots {
    LinearForm before, after;
};

Lots lotsOf(const Dossier& dossier, const SeriesData& series) {
    std::vector<std::size_t> before;
    std::vector<std::size_t> after;
    for (const auto& [whole, rest] : series.pairs) {
        before.push_back(whole);
        after.push_back(rest);
    }
    return {commonPart(dossier, before), commonPart(dossier, after)};
}

/// Grams after = ratio x grams before, of a fresh lot: its residual spread belongs to lots of the
/// mean weight and grows with the square root of the lot. Inverse: from after to before.
Result<LinearForm> byRatio(const LineContext& context, std::size_t index, bool inverse,
                           const LinearForm& grams) {
    const SeriesData& series = context.dossier.series[index];
    const auto ratio = ratioOf(context.dossier, series, context.assumptions());
    if (!ratio) return fail(ratio.error());
    const SourceKey pool{SourceKind::RatioMean, seriesKey(index), 0};
    const Lots lots = lotsOf(context.dossier, series);
    LinearForm factor = lots.after.dividedBy(lots.before);
    factor.depend({pool, ratio->ratioUncertainty(), ratio->freedom, pool}, 1);
    const Source lot = scatter({SourceKind::RatioScatter, seriesKey(index), context.number},
                               ratio->residualSpread, ratio->freedom, pool);
    if (!inverse) {
        LinearForm after = factor.times(grams);
        after.depend(lot, std::sqrt(grams.value() / ratio->meanBefore));
        return after;
    }
    if (factor.value() <= 0) return fail(ErrorCode::NothingWeighed);
    LinearForm before = grams.dividedBy(factor);
    before.depend(lot, -std::sqrt(before.value() / ratio->meanBefore) / factor.value());
    return before;
}

}  // namespace

// The cook's own ratio before the table's refuse, since refuse is of whole lots in a laboratory and
// its kind differs by food: shell, peel, or gristle that no kitchen trims.
Result<LinearForm> edibleOf(const LineContext& context, const LinearForm& purchased, OpenWay& way) {
    way.trimmed = true;
    way.why.edibleByRefuse = !context.line.trim.has_value();
    if (context.line.trim) {
        auto edible = byRatio(context, *context.line.trim, false, purchased);
        if (edible) way.why.edible = edible->value() / purchased.value();
        return edible;
    }
    if (!context.food.table || !context.food.table->refusePercent) return fail(ErrorCode::NoYield);
    LinearForm share{1 - *context.food.table->refusePercent / 100};
    share.depend(rectangle({SourceKind::Refuse, context.foodIndex, 0}, rectangular(0.01)), -1);
    way.why.edible = share.value();
    return share.times(purchased);
}

Result<LinearForm> inRowState(const LineContext& context, const LinearForm& grams,
                              std::optional<FoodState> weighedIn, OpenWay& way) {
    if (!context.line.yield || weighedIn == context.line.yield->to) return grams;
    const YieldData& yield = *context.line.yield;
    way.yielded = true;
    if (yield.series) {
        auto after = byRatio(context, *yield.series, yield.inverse, grams);
        if (after) way.why.yielded = after->value() / grams.value();
        return after;
    }
    LinearForm factor{yield.factor};
    way.why.yielded = yield.factor;
    if (yield.within > 0)
        factor.depend(
            rectangle({SourceKind::YieldStated, 0, context.number}, rectangular(2 * yield.within)),
            1);
    return factor.times(grams);
}

std::optional<Error> bringToRow(const LineContext& context, OpenWay& way) {
    if (context.line.asPurchased) {
        auto edible = edibleOf(context, way.grams, way);
        if (!edible) return edible.error();
        way.grams = std::move(*edible);
    }
    auto brought = inRowState(context, way.grams, context.line.state, way);
    if (!brought) return brought.error();
    way.grams = std::move(*brought);
    return std::nullopt;
}

}  // namespace nettare
