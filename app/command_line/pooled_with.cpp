#include "app/command_line/pooled_with.h"

#include <fmt/core.h>

#include <algorithm>

#include "app/command_line/series_page.h"
#include "app/command_line/show_recipe.h"

namespace nettare {

namespace {

constexpr std::string_view kPoolWith = "--pool-with";
constexpr std::string_view kBeforeOf = ": ";

/// As a cook would say it: "prawn meat per prawn" is of single prawns.
std::string countedBy(const SeriesKey& key) {
    return key.kind == SeriesKind::Ratio ? key.of : fmt::format("grams per {}", key.of);
}

/// "fennel: edible / bought" where no food is called all of that.
std::vector<SeriesSummary> seriesNamed(const std::vector<SeriesSummary>& all,
                                       const std::string& name) {
    std::vector<SeriesSummary> found = seriesOfFood(all, name);
    const auto colon = name.rfind(kBeforeOf);
    if (!found.empty() || colon == std::string::npos) return found;
    found = seriesOfFood(all, name.substr(0, colon));
    const std::string of = name.substr(colon + kBeforeOf.size());
    std::erase_if(found, [&of](const SeriesSummary& one) { return one.key.of != of; });
    return found;
}

Result<SeriesKey> earlierKey(const std::vector<SeriesSummary>& all, const std::string& name,
                             const SeriesKey& key) {
    const auto found = seriesNamed(all, name);
    if (found.empty())
        return fail(ofArgument(
            kPoolWith,
            Error{ErrorCode::SeriesNotFound}.with("found", name).with("known", seriesTitles(all))));
    auto fitting = found;
    std::erase_if(fitting, [&key](const SeriesSummary& one) {
        return one.key.kind != key.kind || one.key.of != key.of;
    });
    if (fitting.empty())
        return fail(ofArgument(kPoolWith, Error{ErrorCode::PoolOfOther}
                                              .with("found", seriesTitle(found.front().key))
                                              .with("wanted", countedBy(key))));
    if (fitting.size() > 1)
        return fail(ofArgument(
            kPoolWith, Error{ErrorCode::SeriesAmbiguous}.with("known", seriesTitles(fitting))));
    return fitting.front().key;
}

}  // namespace

std::vector<SeriesSummary> seriesOfFood(const std::vector<SeriesSummary>& all,
                                        const std::string& food) {
    const std::string wanted = foldedWhat(food);
    std::vector<SeriesSummary> exact;
    std::vector<SeriesSummary> begun;
    for (const SeriesSummary& one : all) {
        const std::string what = foldedWhat(one.key.what);
        if (what == wanted) exact.push_back(one);
        if (what.starts_with(wanted)) begun.push_back(one);
    }
    return exact.empty() ? begun : exact;
}

std::string seriesTitles(const std::vector<SeriesSummary>& series) {
    std::string titles;
    for (const SeriesSummary& one : series)
        titles += fmt::format("{}“{}”", titles.empty() ? "" : ", ", seriesTitle(one.key));
    return titles;
}

Result<PoolChoice> poolAsked(const std::vector<SeriesSummary>& all, const SeriesCommand& command,
                             const SeriesKey& key) {
    if (command.poolWith.empty() && command.poolTag.empty()) return PoolChoice{command.pool, {}};
    EarlierSeries earlier{key, {}, {}, {}};
    if (!command.poolWith.empty()) {
        auto named = earlierKey(all, command.poolWith, key);
        if (!named) return fail(named.error());
        earlier.key = std::move(*named);
    }
    if (!command.poolTag.empty()) earlier.tags = {command.poolTag};
    if (!sameSeries(earlier.key, key)) return PoolChoice{false, std::move(earlier)};
    const bool isShown = std::ranges::find(command.tags, command.poolTag) != command.tags.end();
    if (command.tags.empty() || (command.tags.size() == 1 && isShown))
        return fail(
            ofArgument(command.poolWith.empty() ? std::string_view{"--pool-tag"} : kPoolWith,
                       Error{ErrorCode::PoolWithItself}.with("found", earlierName(earlier))));
    (earlier.tags.empty() ? earlier.noneOf : earlier.apartFrom) = command.tags;
    return PoolChoice{false, std::move(earlier)};
}

}  // namespace nettare
