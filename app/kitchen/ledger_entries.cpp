#include "app/kitchen/ledger_entries.h"

#include <algorithm>
#include <map>

#include "core/ledger/reading_subject.h"

namespace nettare {

namespace {

template <class Entry>
const Entry* entryCalled(const std::vector<Entry>& entries, const std::string& id) {
    const auto found = std::ranges::find(entries, id, &Entry::id);
    return found == entries.end() ? nullptr : &*found;
}

/// UUIDs of the entries by the ids of their indications.
using EntryIds = std::map<std::string, std::string>;

std::string idIn(const EntryIds& ids, const std::string& indication) {
    const auto found = ids.find(indication);
    return found == ids.end() ? std::string{} : found->second;
}

/// The reading whose second indication, by time, an indication is: most often its gross; of what
/// was taken out of a jar, what the jar showed afterwards. Null where it is only the first.
const ReadingEntry* readingEndedBy(const RecipeDocument& document, const EntryIds& ids,
                                   const std::string& indication) {
    for (const ReadingEntry& reading : document.readings) {
        const bool tareStands = !reading.tare || ids.contains(*reading.tare);
        if (reading.gross == indication && tareStands) return &reading;
        if (reading.tare == indication && ids.contains(reading.gross)) return &reading;
    }
    return nullptr;
}

void setSubject(ReadingSubject subject, const EntryIds& ids, LedgerEntry& entry) {
    entry.what = std::move(subject.what);
    entry.why = std::move(subject.why);
    entry.row = std::move(subject.row);
    if (!subject.series) return;
    const bool ratio = subject.series->kind == SeriesKind::Ratio;
    if (ratio) subject.series->before = idIn(ids, subject.series->before);
    if (!ratio || !subject.series->before.empty()) entry.series = std::move(*subject.series);
}

/// Pieces, tare and what it is of. An entry refers to earlier ones only.
void addReading(const RecipeDocument& document, const EntryIds& ids, LedgerEntry& entry) {
    const ReadingEntry* reading = readingEndedBy(document, ids, entry.indication);
    if (reading == nullptr) return;
    entry.pieces = reading->pieces;
    const VesselEntry* vessel =
        reading->vessel ? entryCalled(document.vessels, *reading->vessel) : nullptr;
    if (vessel != nullptr) {
        entry.vessel = vessel->name;
        entry.vesselTare = vessel->tare;
    }
    if (reading->gross != entry.indication)
        entry.takenFrom = idIn(ids, reading->gross);
    else if (reading->tare)
        entry.tare = idIn(ids, *reading->tare);
    setSubject(subjectOf(document, reading->id), ids, entry);
}

LedgerEntry equipmentEntry(EntryKind kind, const ScaleEntry& scale, const Adding& adding) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.origin = EntryOrigin::Document;
    entry.id = adding.newId();
    entry.at = adding.at;
    entry.scale = scale.name;
    entry.unit = scale.unit;
    entry.readability = scale.readability;
    return entry;
}

}  // namespace

std::vector<LedgerEntry> ledgerEntriesOf(const RecipeDocument& document, const std::string& recipe,
                                         const Adding& adding) {
    std::vector<LedgerEntry> entries;
    EntryIds ids;
    for (const IndicationEntry& indication : document.indications) {
        const ScaleEntry* scale = entryCalled(document.scales, indication.scale);
        if (scale == nullptr) continue;
        LedgerEntry entry;
        entry.origin = EntryOrigin::Document;
        entry.id = adding.newId();
        entry.at = indication.at.empty() ? adding.at : indication.at;
        entry.recipe = recipe;
        entry.indication = indication.id;
        entry.shown = indication.shown;
        entry.unit = scale->unit;
        entry.readability = scale->readability;
        entry.scale = scale->name;
        entry.state = indication.state;
        addReading(document, ids, entry);
        ids.emplace(indication.id, entry.id);
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<LedgerEntry> equipmentEntriesOf(const RecipeDocument& document,
                                            const BenchEquipment& known, const Adding& adding) {
    std::vector<LedgerEntry> entries;
    for (const ScaleEntry& scale : document.scales) {
        // The kitchen's own scale of that name stays what it is.
        const auto same = [&](const KnownScale& each) { return each.name == scale.name; };
        if (std::ranges::any_of(known.scales, same)) continue;
        entries.push_back(equipmentEntry(EntryKind::Scale, scale, adding));
    }
    for (const VesselEntry& vessel : document.vessels) {
        const ScaleEntry* scale = entryCalled(document.scales, vessel.scale);
        const auto same = [&](const KnownVessel& each) { return each.name == vessel.name; };
        if (scale == nullptr || std::ranges::any_of(known.vessels, same)) continue;
        LedgerEntry entry = equipmentEntry(EntryKind::Vessel, *scale, adding);
        entry.vessel = vessel.name;
        entry.shown = vessel.tare;
        entries.push_back(std::move(entry));
    }
    return entries;
}

Result<std::size_t> recordDocument(Kitchen& kitchen, const RecipeDocument& document,
                                   const std::string& recipe, const Adding& adding) {
    const auto known = kitchen.equipmentEntries();
    if (!known) return fail(known.error());
    for (const LedgerEntry& entry : equipmentEntriesOf(document, equipmentOf(*known), adding))
        if (auto recorded = kitchen.record(entry); !recorded) return fail(recorded.error());
    const auto entries = ledgerEntriesOf(document, recipe, adding);
    for (const LedgerEntry& entry : entries)
        if (auto recorded = kitchen.record(entry); !recorded) return fail(recorded.error());
    return entries.size();
}

}  // namespace nettare
