#include <cmath>

#include "core/nutrition/line_context.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

std::uint32_t keyOf(std::size_t index) {
    return static_cast<std::uint32_t>(index);
}

/// Pieces that were weighed themselves bring the rounding of their readings, the mean of a series
/// for other pieces what those have in common.
LinearForm gramsEach(const Dossier& dossier, const SeriesData& series, SeriesUse use,
                     const PieceStatistics& statistics) {
    const LinearForm sum = use == SeriesUse::Among ? weighed(dossier, series.readings)
                                                   : commonPart(dossier, series.readings);
    LinearForm each{statistics.mean};
    for (const LinearForm::Term& term : sum.terms())
        each.depend(term.source, term.sensitivity / statistics.pieces);
    return each;
}

/// What of a line was weighed as bought, as eaten and as cooked; each of the three is one lot.
struct WeighedParts {
    LinearForm purchased, edible, cooked;
    bool anyPurchased = false, anyUncooked = false, anyCooked = false;
};

WeighedParts partsOf(const LineContext& context) {
    WeighedParts parts;
    for (const std::size_t reading : context.line.weighed) {
        const LinearForm net = weighed(context.dossier, reading).times(context.line.weighedFactor);
        const WeighedState state = stateOf(context.dossier, reading);
        const bool cooked = state == WeighedState::Cooked;
        const bool purchased = state == WeighedState::AsPurchased;
        (cooked ? parts.cooked : purchased ? parts.purchased : parts.edible).add(net);
        (cooked ? parts.anyCooked : parts.anyUncooked) = true;
        parts.anyPurchased = parts.anyPurchased || purchased;
    }
    return parts;
}

}  // namespace

Result<std::optional<OpenWay>> weighedWay(const LineContext& context) {
    const Line& line = context.line;
    if (line.weighed.empty()) return std::optional<OpenWay>{};
    OpenWay way;
    way.way = Way::Weighed;
    way.why.basis = WayBasis::Readings;
    way.scaled = line.weighedFactor != 1;
    WeighedParts parts = partsOf(context);
    // All that was bought for the line is one lot: its scatter counts once.
    if (parts.anyPurchased) {
        const auto edible = edibleOf(context, parts.purchased, way);
        if (!edible) return fail(edible.error());
        parts.edible.add(*edible);
    }
    const std::pair<const LinearForm*, std::optional<FoodState>> lots[] = {
        {parts.anyUncooked ? &parts.edible : nullptr, line.state},
        {parts.anyCooked ? &parts.cooked : nullptr, line.state.value_or(FoodState::Cooked)}};
    for (const auto& [lot, state] : lots) {
        if (lot == nullptr) continue;
        const auto brought = inRowState(context, *lot, state, way);
        if (!brought) return fail(brought.error());
        way.grams.add(*brought);
    }
    return std::optional{std::move(way)};
}

// The mean is one source for all lines of the series, the scatter of the pieces a fresh one per
// line; both rest on one estimated s, hence the common pool. Of a lot that was weighed whole
// neither is left.
Result<std::optional<OpenWay>> seriesWay(const LineContext& context) {
    if (!context.line.series || context.line.toTaste) return std::optional<OpenWay>{};
    const auto [index, use] = *context.line.series;
    const SeriesData& series = context.dossier.series[index];
    const auto statistics = statisticsOf(context.dossier, series, context.assumptions());
    if (!statistics) return fail(statistics.error());
    const double count = context.line.amount.middle();
    if (use == SeriesUse::Among && count < statistics->pieces)
        return fail(Error{ErrorCode::PiecesNotAmong}
                        .with("found", context.line.amount.text())
                        .with("pieces", std::to_string(statistics->pieces)));
    const TotalVariance variance = use == SeriesUse::Among ? varianceAmong(*statistics, count)
                                                           : varianceOfOthers(*statistics, count);
    const SourceKey mean{SourceKind::SeriesMean, keyOf(index), 0};
    LinearForm each = gramsEach(context.dossier, series, use, *statistics);
    if (variance.ofMean > 0)
        each.depend({mean, std::sqrt(variance.ofMean) / count, statistics->freedom, mean}, 1);
    OpenWay way;
    way.way = Way::Series;
    way.why.basis = WayBasis::OwnSeries;
    way.why.gramsEach = statistics->mean;
    way.why.series = *statistics;
    way.grams = each.times(amountOf(context.line, context.number));
    way.readings = statistics->readings;
    way.wholeLot = use == SeriesUse::Among && variance.ofPieces == 0;
    way.spreadAssumed = statistics->spreadAssumed && !way.wholeLot;
    if (!way.wholeLot)
        way.grams.depend(scatter({SourceKind::SeriesScatter, keyOf(index), context.number},
                                 std::sqrt(variance.ofPieces), statistics->freedom, mean),
                         1);
    fillUp(context, way);
    const WeighedState state = stateOf(context.dossier, series.readings.front());
    if (state == WeighedState::AsPurchased) {
        const auto edible = edibleOf(context, way.grams, way);
        if (!edible) return fail(edible.error());
        way.grams = *edible;
    }
    const auto weighedIn = context.line.state || state != WeighedState::Cooked
                               ? context.line.state
                               : std::optional{FoodState::Cooked};
    auto brought = inRowState(context, way.grams, weighedIn, way);
    if (!brought) return fail(brought.error());
    way.grams = std::move(*brought);
    return std::optional{std::move(way)};
}

}  // namespace nettare
