#include "app/session/pool_choice.h"

#include <algorithm>
#include <utility>

#include "core/ledger/counted_series.h"
#include "core/weighing/series.h"

namespace nettare {

namespace {

bool bears(const LedgerReading& reading, const std::string& tag) {
    return bearsTags(reading, {tag});
}

/// Those of the numbers whose readings are of the earlier series.
template <class Numbers>
Numbers ofEarlier(const Numbers& numbers, const std::vector<LedgerReading>& readings,
                  const std::vector<std::size_t>& places, const EarlierSeries& series) {
    Numbers kept;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (isOfEarlier(readings[places[i]], series)) kept.push_back(numbers[i]);
    return kept;
}

// What is assumed counts for one reading only, which gives no spread.
template <class Statistics>
std::optional<EarlierSpread> spreadBy(const Result<Statistics>& statistics,
                                      const EarlierSeries& series) {
    const auto known = statistics ? ownSpread(*statistics) : std::nullopt;
    if (!known) return std::nullopt;
    return EarlierSpread{*known, earlierName(series), statistics->readings};
}

}  // namespace

std::string earlierName(const EarlierSeries& series) {
    std::string name = series.key.what;
    for (const std::string& tag : series.tags) (name += ", ") += tag;
    for (std::size_t i = 0; i < series.noneOf.size(); ++i)
        (name += i == 0 ? " without " : " and ") += series.noneOf[i];
    return name;
}

bool isOfEarlier(const LedgerReading& reading, const EarlierSeries& series) {
    const bool isShown = !series.apartFrom.empty() && bearsTags(reading, series.apartFrom);
    return !isShown && bearsTags(reading, series.tags) &&
           std::ranges::none_of(series.noneOf,
                                [&](const std::string& tag) { return bears(reading, tag); });
}

Result<std::optional<EarlierSpread>> earlierSpread(const Kitchen& kitchen,
                                                   const EarlierSeries& series) {
    auto entries = kitchen.seriesEntries(series.key);
    if (!entries) return fail(entries.error());
    const auto readings = readingsOf(std::move(*entries), {});
    const CountedSeries counted = countedSeries(readings, series.key, series.tags);
    if (series.key.kind == SeriesKind::Ratio)
        return spreadBy(
            ratioStatistics(ofEarlier(counted.ratios, readings, counted.places, series), {}),
            series);
    return spreadBy(
        pieceStatistics(ofEarlier(counted.pieces, readings, counted.places, series), {}), series);
}

PoolChoices::Split PoolChoices::split(const SeriesKey& key, std::vector<std::string> tags) {
    std::ranges::sort(tags);
    return {SeriesKey{foldedWhat(key.what), key.kind, key.of}, std::move(tags)};
}

void PoolChoices::choose(const SeriesKey& key, const std::vector<std::string>& tags,
                         PoolChoice choice) {
    Split wanted = split(key, tags);
    const auto known = std::ranges::find(chosen_, wanted, &std::pair<Split, PoolChoice>::first);
    if (known == chosen_.end())
        chosen_.emplace_back(std::move(wanted), std::move(choice));
    else
        known->second = std::move(choice);
}

std::optional<PoolChoice> PoolChoices::of(const SeriesKey& key,
                                          const std::vector<std::string>& tags) const {
    const auto found =
        std::ranges::find(chosen_, split(key, tags), &std::pair<Split, PoolChoice>::first);
    return found == chosen_.end() ? std::nullopt : std::optional{found->second};
}

}  // namespace nettare
