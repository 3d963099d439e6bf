#include "core/edit/series_edits.h"

#include <algorithm>

#include "core/edit/ledger_readings.h"
#include "core/edit/line_parts.h"
#include "core/edit/series_place.h"
#include "core/food/piece_word.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// What the readings of a series are in a document, as its list holds them: ids, or pairs of ids.
class BoundReadings {
public:
    BoundReadings(LedgerReadings& readings, const SeriesToBind& series)
        : readings_{readings}, ratio_{series.key.kind == SeriesKind::Ratio} {
        readings.know(series.readings);
        readings.know(series.tares);
    }

    /// Those that count, added to the document where they are not there.
    Json::Array counted(const SeriesToBind& series) {
        Json::Array bound;
        for (const LedgerReading& reading : series.readings)
            if (reading.countsInSeries())
                if (auto entry = entryOf(reading)) bound.push_back(std::move(*entry));
        return bound;
    }

    /// Ids of the readings of the series that the document holds and that do not count, as a
    /// ratio whose reading before was taken back.
    std::vector<std::string> uncounted(const SeriesToBind& series) const {
        std::vector<std::string> ids;
        for (const LedgerReading& reading : series.readings)
            if (!reading.countsInSeries())
                if (auto id = readings_.idOf(reading)) ids.push_back(std::move(*id));
        return ids;
    }

private:
    std::optional<Json> entryOf(const LedgerReading& reading) {
        if (!ratio_) {
            const auto id = readings_.add(reading);
            return id ? std::optional{Json{*id}} : std::nullopt;
        }
        const auto& mark = reading.entry().series;
        const LedgerReading* first = mark ? readings_.standing(mark->before) : nullptr;
        const auto before = first != nullptr ? readings_.add(*first) : std::nullopt;
        const auto after = before ? readings_.add(reading) : std::nullopt;
        if (!after) return std::nullopt;
        Json pair = Json::object();
        return pair.set("before", Json{*before}).set("after", Json{*after});
    }

    LedgerReadings& readings_;
    bool ratio_;
};

/// The id of the reading that an entry of a series' list stands for: of a pair, the later one.
std::string_view readingOf(const Json& entry) {
    return entry.text() != nullptr ? std::string_view{*entry.text()} : textAt(entry, "after");
}

/// The list as it is to be: what is there and counts, or is none of the ledger's, in its order;
/// then what is new. A pair may have another reading before it now.
Json::Array broughtUpTo(const Json::Array& there, const Json::Array& counted,
                        const std::vector<std::string>& uncounted) {
    Json::Array list;
    const auto holds = [](const Json::Array& entries, std::string_view reading) {
        return std::ranges::find(entries, reading, readingOf);
    };
    for (const Json& entry : there) {
        const auto now = holds(counted, readingOf(entry));
        if (now != counted.end())
            list.push_back(*now);
        else if (std::ranges::find(uncounted, readingOf(entry)) == uncounted.end())
            list.push_back(entry);
    }
    for (const Json& entry : counted)
        if (holds(there, readingOf(entry)) == there.end()) list.push_back(entry);
    return list;
}

Json listOf(Json::Array entries) {
    Json list = Json::array();
    for (Json& entry : entries) list.append(std::move(entry));
    return list;
}

/// What the line counts must be what the series weighs; a ratio is of the food.
std::optional<Error> refusalOf(const Json& line, const SeriesKey& key) {
    if (key.kind == SeriesKind::Ratio) return std::nullopt;
    const std::string_view piece = textAt(line, "piece");
    const std::string_view unit = textAt(line, "unit");
    const bool fits = key.kind == SeriesKind::PerPiece ? samePiece(piece, key.of) : unit == key.of;
    if (fits) return std::nullopt;
    const std::string_view counted = !piece.empty() ? piece : !unit.empty() ? unit : "nothing";
    return Error{ErrorCode::SeriesOfOther}
        .with("wanted", counted)
        .with("found", key.of)
        .at(linePlace(textAt(line, "id"), "series"));
}

void bindLine(const Json& line, const std::string& id, const SeriesKey& key, SeriesUse use,
              EditDraft& draft) {
    const std::string_view name = textAt(line, "id");
    if (key.kind == SeriesKind::Ratio) {
        const auto state = stateAfter(key.of);
        if (!state) return draft.set(linePlace(name, "trim"), Json{id});
        Json yield = Json::object();
        yield.set("to", Json{wordFor(*state, kFoodStateWords)}).set("series", Json{id});
        return draft.set(linePlace(name, "yield"), std::move(yield));
    }
    Json binding = Json::object();
    binding.set("id", Json{id}).set("use", Json{wordFor(use, kUseWords)});
    draft.set(linePlace(name, "series"), std::move(binding));
    const bool weighed = line.find("weighed") != nullptr;
    draft.set(linePlace(name, "way"),
              weighed ? std::optional{Json{nameOf(Way::Series)}} : std::nullopt);
}

/// Members that say the same already stay as they are.
void setPooling(const SeriesPlace& place, const Json& there, const SeriesPooling& pooling,
                EditDraft& draft) {
    const auto set = [&](std::string_view key, std::optional<Json> wanted) {
        const Json* now = there.find(key);
        const bool same =
            wanted ? now != nullptr && writeJson(*now) == writeJson(*wanted) : now == nullptr;
        if (!same) draft.set(place.member(key), std::move(wanted));
    };
    set("pooled", pooledJson(pooling));
    set("pooled_with", pooledWithJson(pooling));
}

/// A line without the members that name a series which goes.
void unbindLine(const Json& line, std::string_view series, EditDraft& draft) {
    const std::string_view id = textAt(line, "id");
    const auto names = [&](std::string_view key, std::string_view member) {
        const Json* bound = line.find(key);
        return bound != nullptr && textAt(*bound, member) == series;
    };
    if (names("series", "id")) {
        draft.set(linePlace(id, "series"), std::nullopt);
        if (textAt(line, "way") == nameOf(Way::Series))
            draft.set(linePlace(id, "way"), std::nullopt);
    }
    if (names("yield", "series")) draft.set(linePlace(id, "yield"), std::nullopt);
    if (textAt(line, "trim") == series) draft.set(linePlace(id, "trim"), std::nullopt);
}

void removeSeries(const Json& document, std::size_t index, EditDraft& draft) {
    const std::string_view id = textAt(itemsOf(document, "series")[index], "id");
    for (const Json& line : itemsOf(document, "lines")) unbindLine(line, id, draft);
    if (textAt(*document.find("makes"), "weighed") == id) draft.set("/makes/weighed", std::nullopt);
    draft.remove("/series", index);
}

}  // namespace

Result<Edit> bindToSeries(const Json& document, std::string_view line, const SeriesToBind& series,
                          SeriesUse use) {
    const auto bound = entryNamed(document, "lines", line);
    if (!bound) return fail(bound.error());
    if (auto refusal = refusalOf(**bound, series.key)) return fail(std::move(*refusal));
    EditDraft draft{document, EditKind::Way, nameOfLine(document, **bound)};
    LedgerReadings ledger{document, draft};
    BoundReadings readings{ledger, series};
    const Json::Array counted = readings.counted(series);
    if (counted.empty())
        return fail(Error{ErrorCode::SeriesEmpty}.with("found", series.key.what).at("/series"));
    auto index = indexOfBench(document, series.key, series.tags);
    if (!index) index = indexOfSame(document, series.key, counted);
    std::string id;
    if (index) {
        const Json& there = itemsOf(document, "series")[*index];
        id = textAt(there, "id");
        const SeriesPlace place{id, series.key.kind};
        draft.set(place.list(), listOf(broughtUpTo(itemsOf(there, place.listName()), counted,
                                                   readings.uncounted(series))));
        draft.set(place.member("bench"), benchJson(series.key, series.tags));
        if (series.pooling) setPooling(place, there, *series.pooling, draft);
    } else {
        Json added = newSeries(document, series.key, series.tags, listOf(counted));
        const SeriesPooling pooling = series.pooling.value_or(SeriesPooling{});
        if (auto pooled = pooledJson(pooling)) added.set("pooled", std::move(*pooled));
        if (auto with = pooledWithJson(pooling)) added.set("pooled_with", std::move(*with));
        id = textAt(added, "id");
        draft.append("/series", std::move(added));
    }
    bindLine(**bound, id, series.key, use, draft);
    return draft.takeChecked();
}

std::vector<SeriesToBind> followedSeries(const Json& document) {
    std::vector<SeriesToBind> followed;
    for (const Json& entry : itemsOf(document, "series")) {
        const auto bench = benchOf(entry);
        if (!bench) continue;
        SeriesToBind& series = followed.emplace_back();
        series.key = bench->key;
        series.tags = bench->tags;
        series.pooling = poolingOf(entry);
    }
    return followed;
}

Result<std::optional<Edit>> followSeries(const Json& document, const SeriesToBind& series) {
    const auto index = indexOfBench(document, series.key, series.tags);
    if (!index) return std::optional<Edit>{};
    const Json& there = itemsOf(document, "series")[*index];
    EditDraft draft{document, EditKind::Reading, textAt(there, "name")};
    LedgerReadings ledger{document, draft};
    BoundReadings readings{ledger, series};
    const Json::Array counted = readings.counted(series);
    const SeriesPlace place{std::string{textAt(there, "id")}, series.key.kind};
    Json::Array list =
        broughtUpTo(itemsOf(there, place.listName()), counted, readings.uncounted(series));
    if (list.empty())
        removeSeries(document, *index, draft);
    else
        draft.set(place.list(), listOf(std::move(list)));
    auto edit = draft.takeChecked();
    if (!edit) return fail(edit.error());
    if (changesNothing(*edit)) return std::optional<Edit>{};
    return std::optional{std::move(*edit)};
}

Result<Edit> bindToReading(const Json& document, std::string_view line,
                           const LedgerReading& reading, const std::optional<LedgerReading>& tare) {
    const auto bound = entryNamed(document, "lines", line);
    if (!bound) return fail(bound.error());
    EditDraft draft{document, EditKind::Way, nameOfLine(document, **bound)};
    LedgerReadings ledger{document, draft};
    std::vector<LedgerReading> others;
    if (tare) others.push_back(*tare);
    ledger.know(others);
    const auto id = ledger.add(reading);
    if (!id)
        return fail(Error{ErrorCode::UnknownReference}
                        .with("found", reading.entry().id)
                        .at(linePlace(line, "weighed")));
    Json weighed = Json::array();
    weighed.append(Json{*id});
    draft.set(linePlace(line, "weighed"), std::move(weighed));
    draft.set(linePlace(line, "weighed_for"), std::nullopt);
    draft.set(linePlace(line, "way"), std::nullopt);
    return draft.takeChecked();
}

}  // namespace nettare
