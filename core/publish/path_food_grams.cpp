#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "core/nutrition/weigh.h"
#include "core/publish/measure_text.h"
#include "core/publish/path_work.h"
#include "core/publish/pool_text.h"
#include "core/publish/way_sentence.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// Grams before and after of all pairs of a series.
std::pair<double, double> lotsOfSeries(const Dossier& dossier, std::size_t index) {
    double before = 0;
    double after = 0;
    for (const auto& [whole, rest] : dossier.series[index].pairs) {
        before += netGrams(dossier, dossier.readings[whole]);
        after += netGrams(dossier, dossier.readings[rest]);
    }
    return {before, after};
}

PathDraft timesRatio(PathDraft draft, double numerator, double denominator, std::string words) {
    PathDraft product = pathDraft(PathKind::Grams, "g", std::move(words));
    product.by(std::move(draft), " g");
    product.by(pathNumber(numerator, " g"));
    product.by(pathNumber(denominator, " g"), true);
    return product.computed();
}

PathDraft timesNumber(PathDraft draft, double factor, std::string words) {
    PathDraft product = pathDraft(PathKind::Grams, "g", std::move(words));
    product.by(std::move(draft), " g").byRatio(factor);
    return product.computed();
}

/// Readings of a line by what was on the scale: bought, edible, cooked.
struct ReadingLots {
    std::vector<std::size_t> purchased, edible, cooked;
};

ReadingLots lotsOfReadings(const Dossier& dossier, const Line& line) {
    ReadingLots lots;
    for (const std::size_t reading : line.weighed) {
        const WeighedState state = stateOf(dossier, reading);
        (state == WeighedState::Cooked        ? lots.cooked
         : state == WeighedState::AsPurchased ? lots.purchased
                                              : lots.edible)
            .push_back(reading);
    }
    return lots;
}

PathDraft lotDraft(const PathWork& work, const Line& line, const std::vector<std::size_t>& lot) {
    PathDraft draft = readingsDraft(work, lot, lot.size() == 1 ? "" : "weighed");
    if (line.weighedFactor == 1) return draft;
    return timesNumber(std::move(draft), line.weighedFactor, "weighed for another amount");
}

PathDraft joinedGrams(std::vector<PathDraft> parts, std::string words) {
    if (parts.size() == 1) return std::move(parts.front());
    PathDraft sum = pathDraft(PathKind::Grams, "g", std::move(words));
    for (PathDraft& part : parts) sum.add(std::move(part));
    return sum.computed();
}

/// What was weighed as bought is trimmed, and each lot is brought to the state of the values.
PathDraft weighedDraft(const PathWork& work, const Line& line, const Food& food) {
    const ReadingLots lots = lotsOfReadings(work.dossier, line);
    const auto brought = [&](PathDraft draft, std::optional<FoodState> weighedIn) {
        const bool same = !line.yield || weighedIn == line.yield->to;
        return same ? draft : yieldedDraft(work, line, std::move(draft));
    };
    std::vector<PathDraft> edible;
    if (!lots.edible.empty()) edible.push_back(lotDraft(work, line, lots.edible));
    if (!lots.purchased.empty())
        edible.push_back(edibleDraft(work, line, food, lotDraft(work, line, lots.purchased)));
    std::vector<PathDraft> all;
    if (!edible.empty())
        all.push_back(brought(joinedGrams(std::move(edible), "edible"), line.state));
    if (!lots.cooked.empty())
        all.push_back(
            brought(lotDraft(work, line, lots.cooked), line.state.value_or(FoodState::Cooked)));
    return joinedGrams(std::move(all), "weighed in two states");
}

PathDraft otherDraft(const PathWork& work, const Line& line, const Food& food, const OpenWay& way) {
    PathDraft draft = foundDraft(work, line, way);
    if (way.why.fill)
        draft = timesNumber(
            std::move(draft), way.why.fill->middle(),
            fmt::format("{}, × {} to {} (common practice)", wordFor(*line.fill, kFillWords),
                        shortNumber(way.why.fill->low), shortNumber(way.why.fill->high)));
    if (way.trimmed) draft = edibleDraft(work, line, food, std::move(draft));
    if (way.yielded) draft = yieldedDraft(work, line, std::move(draft));
    return draft;
}

/// A path that does not come to the grams that count would be a lie: it is cut off.
void cutIfOff(PathDraft& draft, double grams) {
    if (std::fabs(draft.value - grams) > 1e-9 * std::fabs(grams)) {
        draft.rule = PathRule::Given;
        draft.factors.clear();
        draft.below.clear();
    }
    draft.value = grams;
}

}  // namespace

PathDraft edibleDraft(const PathWork& work, const Line& line, const Food& food,
                      PathDraft purchased) {
    if (line.trim) {
        const auto [before, after] = lotsOfSeries(work.dossier, *line.trim);
        return timesRatio(std::move(purchased), after, before,
                          "edible share by " + ratioName(work.dossier.series[*line.trim]));
    }
    const double refuse = food.table->refusePercent.value_or(0);
    const std::string& note = food.table->refuseNote;
    PathDraft edible =
        pathDraft(PathKind::Grams, "g",
                  fmt::format("edible share by {}, refuse {} %{}", food.table->row.text(),
                              shortNumber(refuse), note.empty() ? "" : ": " + note));
    edible.by(std::move(purchased), " g");
    PathNumber less = pathNumber(refuse, {}, 2);
    less.minus = true;
    edible.factors.push_back({{pathNumber(100), std::move(less)}});
    edible.by(pathNumber(100), true);
    return edible.computed();
}

PathDraft yieldedDraft(const PathWork& work, const Line& line, PathDraft before) {
    const YieldData& yield = *line.yield;
    const std::string to = "to " + std::string{wordFor(yield.to, kFoodStateWords)};
    if (!yield.series)
        return timesNumber(std::move(before), yield.factor,
                           fmt::format("{}, stated: {}", to, yield.reason));
    const auto [first, last] = lotsOfSeries(work.dossier, *yield.series);
    return timesRatio(std::move(before), yield.inverse ? first : last, yield.inverse ? last : first,
                      fmt::format("{} by {}", to, ratioName(work.dossier.series[*yield.series])));
}

PathDraft foodGramsDraft(const PathWork& work, std::size_t recipe, std::size_t index,
                         const OpenWay& way) {
    const Line& line = work.dossier.recipes[recipe].lines[index];
    const Food& food = work.dossier.foods[std::get<FoodIndex>(line.what).index];
    const bool readings = way.why.basis == WayBasis::Readings;
    PathDraft draft = readings ? weighedDraft(work, line, food) : otherDraft(work, line, food, way);
    cutIfOff(draft, way.grams.value());
    const bool plain = draft.step.kind == PathKind::Reading;
    if (!plain) draft.step.words = waySentence(work.dossier, recipe, index, way);
    draft.step.way = way.way;
    draft.step.plusMinus.clear();
    draft.within(pathHalfWidth(way.grams, work.meaning()), 1);
    if (line.tried == 1) return draft;
    draft = timesNumber(std::move(draft), line.tried, "tried: another amount");
    draft.step.way = way.way;
    return draft;
}

}  // namespace nettare
