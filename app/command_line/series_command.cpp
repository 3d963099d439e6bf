#include "app/command_line/series_command.h"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>
#include <vector>

#include "app/command_line/pooled_with.h"
#include "app/command_line/series_page.h"
#include "app/command_line/series_promise.h"
#include "app/command_line/show_recipe.h"

namespace nettare {

namespace {

using Summaries = std::vector<SeriesSummary>;

Result<SeriesKey> keyNamed(const Summaries& all, const SeriesCommand& command) {
    Summaries found = seriesOfFood(all, command.food);
    if (!command.of.empty())
        std::erase_if(found, [&](const SeriesSummary& one) { return one.key.of != command.of; });
    if (found.empty())
        return fail(ofArgument("FOOD", Error{ErrorCode::SeriesNotFound}
                                           .with("found", command.food)
                                           .with("known", seriesTitles(all))));
    if (found.size() > 1)
        return fail(ofArgument(
            "FOOD", Error{ErrorCode::SeriesAmbiguous}.with("known", seriesTitles(found))));
    return found.front().key;
}

void list(const Summaries& all, std::ostream& out) {
    for (const SeriesSummary& one : all) {
        out << fmt::format("{:<40}  {:>5} {:<8}  last {}", seriesTitle(one.key), one.readings,
                           one.readings == 1 ? "reading" : "readings", one.lastAt);
        for (const std::string& tag : one.tags) out << "  [" << tag << ']';
        out << '\n';
    }
    if (all.empty()) out << "This kitchen has no series yet.\n";
}

}  // namespace

Result<void> showSeries(const SeriesCommand& command, const Kitchen& kitchen, DossierLoader& loader,
                        const OpenRecipe& open, std::ostream& out) {
    const auto all = kitchen.seriesKept();
    if (!all) return fail(all.error());
    if (command.food.empty()) {
        list(*all, out);
        return {};
    }
    BenchSeries asked;
    auto key = keyNamed(*all, command);
    if (!key) return fail(key.error());
    asked.key = std::move(*key);
    if (asked.key.kind == SeriesKind::Ratio && command.others > 0)
        return fail(ofArgument("--others", Error{ErrorCode::NoSeriesOfPieces}
                                               .with("found", seriesTitle(asked.key))
                                               .with("key", "--others")));
    asked.tags = command.tags;
    asked.others = command.others;
    asked.enough = command.within;
    auto pool = poolAsked(*all, command, asked.key);
    if (!pool) return fail(pool.error());
    asked.pool = std::move(*pool);
    const auto series = seriesIn(kitchen, loader, asked);
    if (!series) return fail(series.error());
    if (const auto& earlier = series->pool.earlier; earlier && !series->earlier)
        return fail(
            ofArgument(command.poolWith.empty() ? "--pool-tag" : "--pool-with",
                       Error{ErrorCode::SeriesShowsNoSpread}.with("found", earlierName(*earlier))));
    std::optional<SeriesPromise> promise;
    if (!command.recipe.empty()) {
        auto found = promiseOf(open, command.recipe, series->key, command.tags);
        if (!found) return fail(found.error());
        promise = std::move(*found);
    }
    if (command.json) {
        Json json = seriesJson(*series);
        if (promise) json.set("targets", promiseJson(*promise));
        out << writeJsonIndented(json);
        return {};
    }
    out << seriesPage(*series, promise ? promiseLines(*promise) : std::string{});
    return {};
}

}  // namespace nettare
