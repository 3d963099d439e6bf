#include "app/bench/bench_series.h"

#include <algorithm>
#include <set>

#include "core/food/piece_word.h"
#include "core/nutrition/judged_series.h"
#include "core/publish/against_table_text.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

namespace {

/// Where one reading cannot tell, and no recipe assumes otherwise.
AssumedSpread assumedFor(SeriesKind kind) {
    const Assumptions assumed;
    return {(kind == SeriesKind::PerMeasure ? assumed.volumeSpread : assumed.pieceSpread).value(),
            assumed.spreadFreedom.value()};
}

std::vector<std::string> tagsOf(const std::vector<LedgerReading>& readings) {
    std::set<std::string> tags;
    for (const LedgerReading& reading : readings)
        if (const auto& series = reading.entry().series)
            tags.insert(series->tags.begin(), series->tags.end());
    return {tags.begin(), tags.end()};
}

bool isOf(const LedgerReading& reading, const SeriesKey& key) {
    const auto of = seriesKeyOf(reading.entry());
    return of && sameSeries(*of, key);
}

/// Moves what belongs to the series over and says where what counts went.
void takeReadings(BenchSeries& shown, std::vector<LedgerReading>& all,
                  const std::vector<std::size_t>& counted) {
    auto next = counted.begin();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!isOf(all[i], shown.key) || !bearsTags(all[i], shown.tags)) continue;
        if (next != counted.end() && *next == i) {
            shown.counted.push_back(shown.readings.size());
            ++next;
        }
        if (!all[i].entry().row.empty()) shown.row = all[i].entry().row;
        shown.readings.push_back(std::move(all[i]));
    }
}

/// Of a series that is split: the readings that bear none of the tags shown, then those that bear
/// one other tag.
std::vector<EarlierOffer> offersWithin(const std::vector<LedgerReading>& all,
                                       const BenchSeries& shown) {
    std::vector<EarlierOffer> offers;
    if (shown.tags.empty()) return offers;
    const auto offer = [&](EarlierSeries series) {
        const auto counting = std::ranges::count_if(all, [&](const LedgerReading& reading) {
            return reading.counts() && reading.net && isOf(reading, shown.key) &&
                   isOfEarlier(reading, series);
        });
        if (counting > 1) offers.push_back({std::move(series), static_cast<int>(counting)});
    };
    offer({shown.key, {}, shown.tags, {}});
    for (const std::string& tag : shown.knownTags)
        if (std::ranges::find(shown.tags, tag) == shown.tags.end())
            offer({shown.key, {tag}, {}, shown.tags});
    return offers;
}

using Measures = std::vector<const HouseholdMeasure*>;

/// Those that are shown, and those that all of it bears.
std::vector<std::string> conditionsOf(const BenchSeries& series) {
    std::vector<std::string> conditions = series.tags;
    if (series.counted.empty()) return conditions;
    for (const std::string& tag : series.knownTags)
        if (std::ranges::all_of(series.counted, [&](std::size_t place) {
                return bearsTags(series.readings[place], {tag});
            }))
            conditions.push_back(tag);
    return conditions;
}

bool isSized(const HouseholdMeasure& measure, const std::string& of,
             const std::vector<std::string>& tags) {
    return std::ranges::any_of(tags, [&](const std::string& tag) {
        if (samePiece(measure.unit, tag + " " + of)) return true;
        return samePiece(measure.unit, of) && !measure.qualifier.empty() &&
               measure.qualifier.starts_with(tag);
    });
}

/// The one that a condition names, else all of that name.
Measures measuresOf(const TableFood& food, const std::string& of,
                    const std::vector<std::string>& tags) {
    Measures fitting;
    for (const HouseholdMeasure& measure : food.measures) {
        if (isSized(measure, of, tags)) return {&measure};
        if (samePiece(measure.unit, of)) fitting.push_back(&measure);
    }
    return fitting;
}

PublishedMean meanOf(const TableFood& food, const HouseholdMeasure& measure) {
    PublishedMean published;
    published.source = food.row.text() + ", 1 " + measure.unit;
    if (!measure.qualifier.empty()) published.source += " " + measure.qualifier;
    published.mean = measure.gramsEach();
    published.count = measure.n;
    if (measure.standardDeviation)
        published.deviation = *measure.standardDeviation / measure.amount;
    return published;
}

std::string measureName(const HouseholdMeasure& measure) {
    return measure.qualifier.empty() ? measure.unit : measure.unit + ", " + measure.qualifier;
}

/// A reading that the cook said is as weighed is not asked about again.
void settle(std::optional<std::size_t>& odd, const BenchSeries& series) {
    if (odd && series.readings[series.counted[*odd]].asWeighed) odd.reset();
}

}  // namespace

SeriesQuestion questionOf(const BenchSeries& series) {
    SeriesQuestion question;
    question.assumed = assumedFor(series.key.kind);
    question.poolAssumed = series.pool.usual;
    question.earlier = series.earlier;
    if (series.others > 0) question.others = series.others;
    if (series.enough > 0) question.wanted = series.enough;
    question.published = series.published;
    return question;
}

Result<ReadSeries> readSeries(const Kitchen& kitchen, const SeriesKey& key,
                              const std::vector<std::string>& tags, const PoolChoice& pool) {
    auto entries = kitchen.seriesEntries(key);
    if (!entries) return fail(entries.error());
    const auto checks = kitchen.scaleChecks();
    if (!checks) return fail(checks.error());
    std::vector<LedgerReading> all = readingsOf(std::move(*entries), *checks);
    ReadSeries series;
    series.numbers = countedSeries(all, key, tags);
    series.shown.key = key;
    series.shown.tags = tags;
    series.shown.knownTags = tagsOf(all);
    series.shown.sameSeriesOffers = offersWithin(all, series.shown);
    takeReadings(series.shown, all, series.numbers.places);
    series.shown.pool = pool;
    if (!pool.earlier) return series;
    auto earlier = earlierSpread(kitchen, *pool.earlier);
    if (!earlier) return fail(earlier.error());
    series.shown.earlier = std::move(*earlier);
    return series;
}

std::vector<EarlierOffer> earlierOffers(const BenchSeries& series,
                                        const std::vector<SeriesSummary>& kept) {
    std::vector<EarlierOffer> offers = series.sameSeriesOffers;
    for (const SeriesSummary& other : kept)
        if (other.key.kind == series.key.kind && other.key.of == series.key.of &&
            !sameSeries(other.key, series.key) && other.readings > 1)
            offers.push_back({{other.key, {}, {}, {}}, other.readings});
    return offers;
}

void judge(ReadSeries& series) {
    BenchSeries& shown = series.shown;
    shown.report.reset();
    shown.ratio.reset();
    const SeriesQuestion question = questionOf(shown);
    if (shown.key.kind == SeriesKind::Ratio) {
        if (auto report = judgedRatios(series.numbers.ratios, question)) shown.ratio = *report;
        if (shown.ratio) settle(shown.ratio->outlier, shown);
    } else if (auto report = judgedSeries(series.numbers.pieces, question)) {
        shown.report = *report;
        settle(shown.report->outlier, shown);
    }
}

void holdAgainst(BenchSeries& series, const TableFood& food) {
    if (series.key.kind == SeriesKind::Ratio) return;
    const Measures fitting = measuresOf(food, series.key.of, conditionsOf(series));
    if (fitting.size() == 1) {
        series.published = meanOf(food, *fitting.front());
        return;
    }
    std::vector<std::string> names, all;
    for (const HouseholdMeasure* measure : fitting) names.push_back(measureName(*measure));
    for (const HouseholdMeasure& measure : food.measures)
        if (std::ranges::find(all, measure.unit) == all.end()) all.push_back(measure.unit);
    series.notInTable = notInTableText(series.key, names, all);
}

std::optional<TableRow> rowNamed(const std::string& text) {
    const auto first = text.find(' ');
    const auto last = text.rfind(' ');
    if (first == std::string::npos || first == last) return {};
    return TableRow{text.substr(0, first), text.substr(first + 1, last - first - 1),
                    text.substr(last + 1)};
}

}  // namespace nettare
