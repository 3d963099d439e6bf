#include <cmath>

#include "core/nutrition/line_context.h"
#include "core/nutrition/weigh.h"
#include "core/nutrition/written_amount.h"

namespace nettare {

namespace {

std::uint32_t keyOf(std::size_t index) {
    return static_cast<std::uint32_t>(index);
}

/// What the readings of a series have in common moves its mean and shows in no scatter:
/// calibration, a vessel's tare, an empty scale read once for several. Their own rounding is in the
/// scatter.
LinearForm commonPart(const Dossier& dossier, const std::vector<std::size_t>& readings) {
    const LinearForm sum = weighed(dossier, readings);
    LinearForm common{sum.value()};
    for (const LinearForm::Term& term : sum.terms())
        if (term.source.key.kind != SourceKind::Rounding || std::fabs(term.sensitivity) > 1)
            common.depend(term.source, term.sensitivity);
    return common;
}

/// Ratio of sums with what its readings have in common.
LinearForm commonRatio(const Dossier& dossier, const SeriesData& series) {
    std::vector<std::size_t> before;
    std::vector<std::size_t> after;
    for (const auto& [whole, rest] : series.pairs) {
        before.push_back(whole);
        after.push_back(rest);
    }
    return commonPart(dossier, after).dividedBy(commonPart(dossier, before));
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

}  // namespace

LinearForm gramsFor(const LineContext& context, const LinearForm& each) {
    return each.times(amountOf(context.line, context.number));
}

// The cook's own ratio before the table's refuse, since refuse is of whole lots in a laboratory and
// its kind differs by food: shell, peel, or gristle that no kitchen trims.
Result<LinearForm> trimmed(const LineContext& context, const LinearForm& purchased) {
    const Dossier& dossier = context.dossier;
    if (context.line.trim) {
        const std::size_t index = *context.line.trim;
        const auto ratio = ratioOf(dossier, dossier.series[index], context.assumptions());
        if (!ratio) return fail(ratio.error());
        const SourceKey pool{SourceKind::RatioMean, keyOf(index), 0};
        LinearForm edible = commonRatio(dossier, dossier.series[index]);
        edible.depend({pool, ratio->ratioUncertainty(), ratio->freedom, pool}, 1);
        edible = edible.times(purchased);
        edible.depend({{SourceKind::RatioScatter, keyOf(index), context.number},
                       ratio->residualSpread,
                       ratio->freedom,
                       pool},
                      std::sqrt(purchased.value() / ratio->meanBefore));
        return edible;
    }
    if (!context.food.table || !context.food.table->refusePercent) return fail(ErrorCode::NoYield);
    LinearForm edible{1 - *context.food.table->refusePercent / 100};
    edible.depend(ownSource({SourceKind::Refuse, context.foodIndex, 0}, rectangular(0.01)), -1);
    return edible.times(purchased);
}

Result<std::optional<OpenWay>> weighedWay(const LineContext& context) {
    const Line& line = context.line;
    if (line.weighed.empty()) return std::optional<OpenWay>{};
    OpenWay way;
    way.way = Way::Weighed;
    way.scaled = line.weighedFactor != 1;
    LinearForm purchased;
    for (const std::size_t reading : line.weighed) {
        const LinearForm net = weighed(context.dossier, reading).times(line.weighedFactor);
        const bool whole = stateOf(context.dossier, reading) == WeighedState::AsPurchased;
        (whole ? purchased : way.grams).add(net);
        way.trimmed = way.trimmed || whole;
    }
    if (!way.trimmed) return std::optional{std::move(way)};
    // All that was bought for the line is one lot: its scatter counts once.
    const auto edible = trimmed(context, purchased);
    if (!edible) return fail(edible.error());
    way.grams.add(*edible);
    return std::optional{std::move(way)};
}

// The mean is one source for all lines of the series, the scatter of the pieces a fresh one per
// line; both rest on one estimated s, hence the common pool.
Result<std::optional<OpenWay>> seriesWay(const LineContext& context) {
    if (!context.line.series) return std::optional<OpenWay>{};
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
    way.grams = gramsFor(context, each);
    way.readings = statistics->readings;
    way.spreadAssumed = statistics->spreadAssumed;
    way.grams.depend({{SourceKind::SeriesScatter, keyOf(index), context.number},
                      std::sqrt(variance.ofPieces),
                      statistics->freedom,
                      mean},
                     1);
    if (stateOf(context.dossier, series.readings.front()) == WeighedState::AsPurchased) {
        const auto edible = trimmed(context, way.grams);
        if (!edible) return fail(edible.error());
        way.grams = *edible;
        way.trimmed = true;
    }
    return std::optional{std::move(way)};
}

// Grams that the cook assumes win over a weight as written, which says what should be weighed.
Result<std::optional<OpenWay>> assumedWay(const LineContext& context) {
    const Line& line = context.line;
    OpenWay way;
    if (line.assumed) {
        way.grams = LinearForm{line.assumed->grams.value()};
        way.grams.depend(ownSource({SourceKind::Assumed, 0, context.number},
                                   rectangular(2 * line.assumed->within.value())),
                         1);
        way.spreadAssumed = true;
        return std::optional{std::move(way)};
    }
    if (line.unit == nullptr || line.unit->kind != UnitKind::Mass) return std::optional<OpenWay>{};
    way.grams = writtenGrams(line, context.number);
    if (!line.asPurchased) return std::optional{std::move(way)};
    const auto edible = trimmed(context, way.grams);
    if (!edible) return fail(edible.error());
    way.grams = *edible;
    way.trimmed = true;
    return std::optional{std::move(way)};
}

}  // namespace nettare
