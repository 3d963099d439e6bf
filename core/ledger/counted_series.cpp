#include "core/ledger/counted_series.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "core/quantity/unit.h"

namespace nettare {

namespace {

/// A reading whose net before is known, on the way to a ratio.
struct Pair {
    RatioReading grams;
    double roundingBefore = 0;
};

using ReadingsById = std::unordered_map<std::string, const LedgerReading*>;

ReadingsById byId(const std::vector<LedgerReading>& readings) {
    ReadingsById found;
    for (const LedgerReading& reading : readings) found.emplace(reading.entry().id, &reading);
    return found;
}

Pair pairOf(const LedgerReading& after, double grams, double before, const ReadingsById& known) {
    const auto named = known.find(after.entry().series->before);
    const double roundingAfter = roundingGrams(after);
    return {{before, grams, roundingAfter},
            named == known.end() ? roundingAfter : roundingGrams(*named->second)};
}

/// The rounding of y - r x needs the ratio of all.
std::vector<RatioReading> ratiosOf(const std::vector<Pair>& pairs) {
    double before = 0;
    double after = 0;
    for (const Pair& pair : pairs) {
        before += pair.grams.before;
        after += pair.grams.after;
    }
    const double ratio = before > 0 ? after / before : 0;
    std::vector<RatioReading> ratios;
    ratios.reserve(pairs.size());
    for (const Pair& pair : pairs) {
        ratios.push_back(pair.grams);
        ratios.back().roundingGrams =
            std::hypot(pair.grams.roundingGrams, ratio * pair.roundingBefore);
    }
    return ratios;
}

/// What a ratio's reading was before, in grams; nothing where that is not known.
std::optional<double> beforeGrams(const LedgerReading& reading, const ReadingsById& known) {
    if (!reading.before) return std::nullopt;
    // It is in the unit of the scale that weighed it.
    const auto named = known.find(reading.entry().series->before);
    const std::string& unit =
        named == known.end() ? reading.entry().unit : named->second->entry().unit;
    return massOf(reading.before->value(), *findUnit(unit, MeasureSystem::Metric)).grams();
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
    CountedSeries counted;
    std::vector<Pair> pairs;
    const ReadingsById known = byId(readings);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const LedgerReading& reading = readings[i];
        const auto grams = netGrams(reading);
        if (!grams || !reading.counts() || seriesKeyOf(reading.entry()) != key ||
            !bearsTags(reading, tags))
            continue;
        if (key.kind == SeriesKind::Ratio) {
            const auto before = beforeGrams(reading, known);
            if (!before) continue;
            pairs.push_back(pairOf(reading, *grams, *before, known));
        } else {
            counted.pieces.push_back({*grams, reading.entry().pieces, roundingGrams(reading)});
        }
        counted.places.push_back(i);
    }
    counted.ratios = ratiosOf(pairs);
    return counted;
}

}  // namespace nettare
