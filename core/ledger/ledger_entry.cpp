#include "core/ledger/ledger_entry.h"

#include <algorithm>
#include <functional>

#include "core/ledger/entry_limits.h"
#include "core/ledger/ledger_words.h"
#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

namespace nettare {

bool isHexadecimal(std::string_view text) {
    return std::ranges::all_of(
        text, [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

bool isUuidForm(std::string_view text) {
    if (text.size() != 36) return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        if (dash ? text[i] != '-' : !isHexadecimal(text.substr(i, 1))) return false;
    }
    return true;
}

namespace {

std::string readUuid(ObjectReader& reader, std::string_view key) {
    std::string found = reader.text(key, kAmountLength);
    if (!reader.failure() && !isUuidForm(found))
        reader.failure() =
            Error{ErrorCode::NotAUuid}.with("found", found).at(pointerTo(reader.pointer(), key));
    return found;
}

/// The hash before; the first entry has none.
std::string readPrevious(ObjectReader& reader, long long sequence) {
    if (sequence == 1) return {};
    std::string found = reader.text("previous", 64);
    if (!reader.failure() && (found.size() != 64 || !isHexadecimal(found))) {
        reader.failure() = Error{ErrorCode::NotAHash}.at(reader.pointer() + "/previous");
        reader.failure()->values.push_back({"found", found});
    }
    return found;
}

void setWhereGiven(Json& json, std::string_view key, const std::string& text) {
    if (!text.empty()) json.set(key, Json{text});
}

bool isOfReading(EntryKind kind) {
    return kind == EntryKind::Superseded || kind == EntryKind::LeftOut ||
           kind == EntryKind::TakenIn || kind == EntryKind::Reasoned;
}

void writeDecimal(Json& json, std::string_view key, const std::optional<Decimal>& decimal) {
    if (decimal) json.set(key, Json{decimal->text()});
}

void writeScale(const LedgerEntry& entry, Json& json) {
    json.set("scale", Json{entry.scale}).set("unit", Json{entry.unit});
    json.set("readability", Json{entry.readability.text()});
}

void writeSeries(const SeriesMark& series, Json& json) {
    Json mark = Json::object();
    mark.set("kind", Json{wordFor(series.kind, kSeriesWords)}).set("of", Json{series.of});
    if (!series.tags.empty()) {
        Json tags = Json::array();
        for (const std::string& tag : series.tags) tags.append(Json{tag});
        mark.set("tags", std::move(tags));
    }
    setWhereGiven(mark, "before", series.before);
    json.set("series", std::move(mark));
}

void writeShown(const LedgerEntry& entry, Json& json) {
    writeScale(entry, json);
    json.set("indication", Json{entry.indication});
    json.set("shown", Json{entry.shown.text()});
    setWhereGiven(json, "vessel", entry.vessel);
    json.set("state", Json{wordFor(entry.state, kStateWords)});
    json.set("pieces", Json{static_cast<double>(entry.pieces)});
    setWhereGiven(json, "what", entry.what);
    setWhereGiven(json, "why", entry.why);
    setWhereGiven(json, "row", entry.row);
    setWhereGiven(json, "tare", entry.tare);
    setWhereGiven(json, "taken_from", entry.takenFrom);
    writeDecimal(json, "vessel_tare", entry.vesselTare);
    if (entry.series) writeSeries(*entry.series, json);
}

void readScale(ObjectReader& reader, LedgerEntry& entry) {
    entry.unit = readUnitSymbol(reader, "unit");
    if (!reader.failure() && !isShownByScales(*findUnit(entry.unit, MeasureSystem::UsCustomary)))
        reader.failure() = Error{ErrorCode::UnitNotOfKind}
                               .with("found", entry.unit)
                               .at(reader.pointer() + "/unit");
    entry.readability = reader.decimal("readability", NumberSign::Positive);
    entry.scale = reader.text("scale", kNameLength);
}

SeriesMark readSeries(ObjectReader reader) {
    SeriesMark mark;
    mark.kind = reader.oneOf("kind", kSeriesWords);
    mark.of = reader.text("of", kNameLength);
    if (reader.has("tags")) mark.tags = reader.texts("tags", kMostTags, kNameLength);
    if (mark.kind == SeriesKind::Ratio) mark.before = readUuid(reader, "before");
    reader.finish();
    const auto unsorted = std::ranges::adjacent_find(mark.tags, std::greater_equal<>{});
    if (!reader.failure() && unsorted != mark.tags.end())
        reader.failure() =
            Error{ErrorCode::TagsNotSorted}.with("found", *unsorted).at(reader.pointer() + "/tags");
    return mark;
}

std::string readOptionalUuid(ObjectReader& reader, std::string_view key) {
    return reader.has(key) ? readUuid(reader, key) : std::string{};
}

void readShown(ObjectReader& reader, LedgerEntry& entry) {
    readScale(reader, entry);
    entry.indication = reader.id("indication");
    entry.shown = reader.decimal("shown", NumberSign::Any);
    entry.vessel = reader.optionalText("vessel", kNameLength).value_or("");
    entry.state = reader.oneOf("state", kStateWords);
    entry.pieces = static_cast<int>(reader.wholeNumber("pieces", 1, kMostPiecesWeighed));
    entry.what = reader.optionalText("what", kNameLength).value_or("");
    entry.why = reader.optionalText("why", kWhyLength).value_or("");
    entry.row = reader.optionalText("row", kNameLength).value_or("");
    entry.tare = readOptionalUuid(reader, "tare");
    entry.takenFrom = readOptionalUuid(reader, "taken_from");
    entry.vesselTare = reader.optionalDecimal("vessel_tare", NumberSign::NotNegative);
    if (reader.has("series")) entry.series = readSeries(reader.object("series"));
}

/// A scale, a check of one, a vessel.
void writeEquipment(const LedgerEntry& entry, Json& json) {
    writeScale(entry, json);
    if (entry.kind == EntryKind::Scale) return writeDecimal(json, "capacity", entry.capacity);
    json.set("shown", Json{entry.shown.text()});
    if (entry.kind == EntryKind::Checked)
        json.set("mass", Json{entry.mass.text()});
    else
        json.set("vessel", Json{entry.vessel});
}

void readEquipment(ObjectReader& reader, LedgerEntry& entry) {
    readScale(reader, entry);
    switch (entry.kind) {
        case EntryKind::Scale:
            entry.capacity = reader.optionalDecimal("capacity", NumberSign::Positive);
            return;
        case EntryKind::Checked:
            entry.shown = reader.decimal("shown", NumberSign::Any);
            entry.mass = reader.decimal("mass", NumberSign::Positive);
            return;
        default:
            entry.shown = reader.decimal("shown", NumberSign::NotNegative);
            entry.vessel = reader.text("vessel", kNameLength);
    }
}

}  // namespace

Json entryJson(const LedgerEntry& entry, long long sequence, const std::string& previous) {
    Json json = Json::object();
    json.set("kind", Json{wordFor(entry.kind, kEntryKindWords)});
    json.set("origin", Json{wordFor(entry.origin, kEntryOriginWords)});
    json.set("id", Json{entry.id}).set("at", Json{entry.at});
    json.set("sequence", Json{static_cast<double>(sequence)});
    setWhereGiven(json, "previous", previous);
    setWhereGiven(json, "recipe", entry.recipe);
    setWhereGiven(json, "refers_to", entry.refersTo);
    setWhereGiven(json, "reason", entry.reason);
    if (entry.kind == EntryKind::Shown)
        writeShown(entry, json);
    else if (!isOfReading(entry.kind))
        writeEquipment(entry, json);
    return json;
}

Result<ChainedEntry> readEntry(const Json& json) {
    std::optional<Error> failure;
    ObjectReader reader{json, "", failure};
    ChainedEntry chained;
    LedgerEntry& entry = chained.entry;
    entry.kind = reader.oneOf("kind", kEntryKindWords);
    entry.origin = reader.oneOf("origin", kEntryOriginWords);
    entry.id = readUuid(reader, "id");
    entry.at = reader.time("at");
    chained.sequence = reader.wholeNumber("sequence", 1, kMostEntriesOfChain);
    chained.previous = readPrevious(reader, chained.sequence);
    entry.recipe = reader.optionalId("recipe").value_or("");
    // A new indication may itself be the correction of an earlier one.
    if (isOfReading(entry.kind) || reader.has("refers_to")) {
        entry.refersTo = readUuid(reader, "refers_to");
        entry.reason = reader.text("reason", kNameLength);
    }
    if (entry.kind == EntryKind::Shown)
        readShown(reader, entry);
    else if (!isOfReading(entry.kind))
        readEquipment(reader, entry);
    reader.finish();
    if (failure) return fail(*failure);
    return chained;
}

}  // namespace nettare
