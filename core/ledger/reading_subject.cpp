#include "core/ledger/reading_subject.h"

#include <fmt/format.h>

#include <algorithm>

namespace nettare {

namespace {

bool has(const std::vector<std::string>& ids, std::string_view id) {
    return std::ranges::find(ids, id) != ids.end();
}

bool hasAtOtherCook(const std::vector<CookReadings>& cooks, std::string_view id) {
    return std::ranges::any_of(cooks, [&](const CookReadings& cook) {
        return has(cook.readings, id) || has(cook.notEaten, id);
    });
}

const FoodEntry* foodCalled(const RecipeDocument& document, const std::string& id) {
    const auto found = std::ranges::find(document.foods, id, &FoodEntry::id);
    return found == document.foods.end() ? nullptr : &*found;
}

void takeFood(const RecipeDocument& document, const std::string& id, ReadingSubject& subject) {
    const FoodEntry* food = foodCalled(document, id);
    if (food == nullptr) return;
    if (subject.what.empty()) subject.what = food->name;
    if (food->table) subject.row = food->table->text();
}

/// Which lines a series tells about: by piece or measure, as trim, as yield.
bool isOfSeries(const LineEntry& line, const std::string& series) {
    return (line.series && line.series->series == series) || line.trim == series ||
           (line.yield && line.yield->series == series);
}

std::string ratioWords(const LineEntry* line, const std::string& series) {
    if (line == nullptr) return "after / before";
    if (line->trim == series) return "edible / bought";
    const FoodState to = line->yield->to;
    return to == FoodState::Drained ? "drained / whole" : "cooked / raw";
}

/// The gross of a reading, by its id in the document.
std::string grossOf(const RecipeDocument& document, const std::string& reading) {
    const auto found = std::ranges::find(document.readings, reading, &ReadingEntry::id);
    return found == document.readings.end() ? std::string{} : found->gross;
}

/// The pair that a reading came out of.
const PairEntry* pairAfter(const SeriesEntry& series, std::string_view reading) {
    const auto found = std::ranges::find(series.pairs, reading, &PairEntry::after);
    return found == series.pairs.end() ? nullptr : &*found;
}

bool isBefore(const SeriesEntry& series, std::string_view reading) {
    return std::ranges::find(series.pairs, reading, &PairEntry::before) != series.pairs.end();
}

std::optional<ReadingSubject> ofSeries(const RecipeDocument& document, std::string_view reading) {
    for (const SeriesEntry& series : document.series) {
        const PairEntry* pair = pairAfter(series, reading);
        const bool before = isBefore(series, reading);
        if (!has(series.readings, reading) && pair == nullptr && !before) continue;
        const auto line = std::ranges::find_if(
            document.lines, [&](const LineEntry& each) { return isOfSeries(each, series.id); });
        const LineEntry* const used = line == document.lines.end() ? nullptr : &*line;
        ReadingSubject subject;
        subject.what = series.name;
        subject.why = fmt::format("series, for “{}”", document.title);
        if (used != nullptr) takeFood(document, used->food, subject);
        if (series.bench) subject.what = series.bench->what;
        if (before) return subject;
        SeriesMark mark{series.kind, series.of, {}, {}};
        if (series.bench) mark.tags = series.bench->tags;
        if (pair != nullptr)
            mark.of = series.bench ? series.bench->of : ratioWords(used, series.id);
        if (pair != nullptr) mark.before = grossOf(document, pair->before);
        subject.series = std::move(mark);
        return subject;
    }
    return std::nullopt;
}

std::optional<ReadingSubject> ofLine(const RecipeDocument& document, std::string_view reading) {
    for (const LineEntry& line : document.lines) {
        if (!has(line.weighed, reading)) continue;
        ReadingSubject subject;
        subject.why = fmt::format("weight of the line, for “{}”", document.title);
        takeFood(document, line.food, subject);
        return subject;
    }
    return std::nullopt;
}

std::optional<ReadingSubject> ofDish(const RecipeDocument& document, std::string_view reading) {
    if (!document.cooked) return std::nullopt;
    const CookedEntry& cooked = *document.cooked;
    if (has(cooked.notEaten, reading))
        return ReadingSubject{document.title, "not eaten, in the cooked weight", {}, {}};
    if (has(cooked.readings, reading) || hasAtOtherCook(cooked.otherCooks, reading))
        return ReadingSubject{document.title, "cooked weight", {}, {}};
    return std::nullopt;
}

std::optional<ReadingSubject> ofLeftOver(const RecipeDocument& document, std::string_view reading) {
    for (const ResidueEntry& residue : document.residues) {
        if (!has(residue.readings, reading) && !hasAtOtherCook(residue.otherCooks, reading))
            continue;
        return ReadingSubject{residue.called.empty() ? document.title : residue.called,
                              fmt::format("left over, for “{}”", document.title),
                              {},
                              {}};
    }
    return std::nullopt;
}

}  // namespace

ReadingSubject subjectOf(const RecipeDocument& document, std::string_view reading) {
    for (const auto of : {ofSeries, ofLine, ofDish, ofLeftOver})
        if (auto subject = of(document, reading)) return std::move(*subject);
    return {};
}

}  // namespace nettare
