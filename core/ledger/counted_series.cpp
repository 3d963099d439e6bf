#include "core/ledger/counted_series.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/unit.h"

namespace nettare {

namespace {

/// A reading whose net before is known, on the way to a ratio.
struct RatioPair {
    RatioReading grams;
    double roundingBefore = 0;
};

bool isOf(const LedgerEntry& entry, const SeriesKey& key) {
    if (entry.kind != EntryKind::Shown || !entry.series) return false;
    if (entry.series->kind != key.kind || entry.series->of != key.of) return false;
    return entry.what == key.what || sameSeries({entry.what, key.kind, key.of}, key);
}

bool countsIn(const LedgerReading& reading, const SeriesKey& key,
              const std::vector<std::string>& tags) {
    return reading.countsInSeries() && isOf(reading.entry(), key) && bearsTags(reading, tags);
}

/// The rounding of y - r x needs the ratio of all.
std::vector<RatioReading> ratiosOf(const std::vector<RatioPair>& pairs) {
    double before = 0;
    double after = 0;
    for (const RatioPair& pair : pairs) {
        before += pair.grams.before;
        after += pair.grams.after;
    }
    const double ratio = before > 0 ? after / before : 0;
    std::vector<RatioReading> ratios;
    ratios.reserve(pairs.size());
    for (const RatioPair& pair : pairs) {
        ratios.push_back(pair.grams);
        ratios.back().roundingGrams =
            std::hypot(pair.grams.roundingGrams, ratio * pair.roundingBefore);
    }
    return ratios;
}

CountedSeries countedRatios(const std::vector<LedgerReading>& readings, const SeriesKey& key,
                            const std::vector<std::string>& tags) {
    CountedSeries counted;
    std::vector<RatioPair> pairs;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const LedgerReading& reading = readings[i];
        if (!countsIn(reading, key, tags)) continue;
        const Unit& unit = *findUnit(reading.entry().unit, MeasureSystem::UsCustomary);
        pairs.push_back({{massOf(reading.before->value(), unit).grams(),
                          massOf(reading.net->value(), unit).grams(), roundingGrams(reading)},
                         reading.roundingBeforeGrams});
        counted.places.push_back(i);
    }
    counted.ratios = ratiosOf(pairs);
    return counted;
}

}  // namespace

bool bearsTags(const LedgerReading& reading, const std::vector<std::string>& tags) {
    const auto& series = reading.entry().series;
    return series && std::ranges::all_of(tags, [&series](const std::string& tag) {
               return std::ranges::find(series->tags, tag) != series->tags.end();
           });
}

CountedSeries countedSeries(const std::vector<LedgerReading>& readings, const SeriesKey& key,
                            const std::vector<std::string>& tags) {
    if (key.kind == SeriesKind::Ratio) return countedRatios(readings, key, tags);
    CountedSeries counted;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const LedgerReading& reading = readings[i];
        if (!countsIn(reading, key, tags)) continue;
        counted.pieces.push_back(
            {*netGrams(reading), reading.entry().pieces, roundingGrams(reading)});
        counted.places.push_back(i);
    }
    return counted;
}

}  // namespace nettare
