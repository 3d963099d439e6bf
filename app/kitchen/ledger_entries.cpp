#include "app/kitchen/ledger_entries.h"

#include <algorithm>
#include <map>

#include "core/ledger/entry_limits.h"
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

/// What is known while the entries of a document are made.
struct Made {
    const InLedger& known;
    EntryIds ids;

    /// True where the ledger has a net of that gross, so that its reading counts there.
    [[nodiscard]] bool hasNetOf(const std::string& gross) const {
        const auto found = known.indications.find(gross);
        return found != known.indications.end() && found->second;
    }
};

/// The reading whose second indication, by time, an indication is: most often its gross; of what
/// was taken out of a jar, what the jar showed afterwards. Null where it is only the first.
const ReadingEntry* readingEndedBy(const RecipeDocument& document, const Made& made,
                                   const std::string& indication) {
    for (const ReadingEntry& reading : document.readings) {
        const bool tareStands = !reading.tare || made.ids.contains(*reading.tare);
        if (reading.gross == indication && tareStands) return &reading;
        const bool grossStands = made.ids.contains(reading.gross) && !made.hasNetOf(reading.gross);
        if (reading.tare == indication && grossStands) return &reading;
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
void addReading(const RecipeDocument& document, const Made& made, LedgerEntry& entry) {
    const ReadingEntry* reading = readingEndedBy(document, made, entry.indication);
    if (reading == nullptr) return;
    entry.pieces = reading->pieces;
    const VesselEntry* vessel =
        reading->vessel ? entryCalled(document.vessels, *reading->vessel) : nullptr;
    if (vessel != nullptr) {
        entry.vessel = vessel->name;
        entry.vesselTare = vessel->tare;
        entry.tare = idIn(made.known.vessels, vessel->id);
    }
    if (reading->gross != entry.indication)
        entry.takenFrom = idIn(made.ids, reading->gross);
    else if (reading->tare)
        entry.tare = idIn(made.ids, *reading->tare);
    setSubject(subjectOf(document, reading->id), made.ids, entry);
}

/// As an entry of that kind would speak of the scale.
LedgerEntry entryOnScale(EntryKind kind, const ScaleEntry& scale) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.scale = scale.name;
    entry.unit = scale.unit;
    entry.readability = scale.readability;
    return entry;
}

LedgerEntry emptyVessel(const VesselEntry& vessel, const ScaleEntry& scale) {
    LedgerEntry entry = entryOnScale(EntryKind::Vessel, scale);
    entry.vessel = vessel.name;
    entry.shown = vessel.tare;
    return entry;
}

bool showsSame(const LedgerEntry& entry, const IndicationEntry& indication,
               const ScaleEntry& scale) {
    return entry.shown == indication.shown && entry.unit == scale.unit &&
           entry.readability == scale.readability && entry.scale == scale.name;
}

bool isNetByTare(const LedgerEntry& entry) {
    return entry.takenFrom.empty() && (!entry.tare.empty() || entry.vesselTare);
}

/// The entry of that id; nothing where there is none.
Result<std::optional<LedgerEntry>> ledgerEntry(const Kitchen& kitchen, const std::string& id) {
    const auto entries = kitchen.entriesAbout(id);
    if (!entries && entries.error().code == ErrorCode::ReadingNotFound)
        return std::optional<LedgerEntry>{};
    if (!entries) return fail(entries.error());
    for (const ChainedEntry& chained : *entries)
        if (chained.entry.id == id) return std::optional{chained.entry};
    return std::optional<LedgerEntry>{};
}

void complete(LedgerEntry& entry, const Adding& adding) {
    entry.origin = EntryOrigin::Document;
    entry.id = adding.newId();
    entry.at = adding.at;
}

}  // namespace

std::vector<LedgerEntry> ledgerEntriesOf(const RecipeDocument& document, const std::string& recipe,
                                         const Adding& adding, const InLedger& known) {
    std::vector<LedgerEntry> entries;
    Made made{known, {}};
    for (const auto& [id, isNet] : known.indications) made.ids.emplace(id, id);
    for (const IndicationEntry& indication : document.indications) {
        const ScaleEntry* scale = entryCalled(document.scales, indication.scale);
        if (scale == nullptr || known.indications.contains(indication.id)) continue;
        LedgerEntry entry = entryOnScale(EntryKind::Shown, *scale);
        complete(entry, adding);
        if (!indication.at.empty()) entry.at = indication.at;
        entry.recipe = recipe;
        entry.indication = indication.id;
        entry.shown = indication.shown;
        entry.state = indication.state;
        addReading(document, made, entry);
        made.ids.emplace(indication.id, entry.id);
        entries.push_back(std::move(entry));
    }
    return entries;
}

Result<InLedger> inLedger(const Kitchen& kitchen, const RecipeDocument& document) {
    InLedger known;
    for (const IndicationEntry& indication : document.indications) {
        const ScaleEntry* scale = entryCalled(document.scales, indication.scale);
        if (scale == nullptr || !isUuidForm(indication.id)) continue;
        const auto entry = ledgerEntry(kitchen, indication.id);
        if (!entry) return fail(entry.error());
        if (*entry && showsSame(**entry, indication, *scale))
            known.indications.emplace(indication.id, isNetByTare(**entry));
    }
    const auto equipment = kitchen.equipmentEntries();
    if (!equipment) return fail(equipment.error());
    for (const VesselEntry& vessel : document.vessels) {
        const ScaleEntry* scale = entryCalled(document.scales, vessel.scale);
        if (scale == nullptr) continue;
        std::string entry = vesselEntryOf(*equipment, emptyVessel(vessel, *scale));
        if (!entry.empty()) known.vessels.emplace(vessel.id, std::move(entry));
    }
    return known;
}

std::vector<LedgerEntry> equipmentEntriesOf(const RecipeDocument& document,
                                            const BenchEquipment& known, const Adding& adding) {
    std::vector<LedgerEntry> entries;
    for (const ScaleEntry& scale : document.scales) {
        // The kitchen's own scale of that name stays what it is.
        const auto same = [&](const KnownScale& each) { return each.name == scale.name; };
        if (std::ranges::any_of(known.scales, same)) continue;
        entries.push_back(entryOnScale(EntryKind::Scale, scale));
        complete(entries.back(), adding);
    }
    for (const VesselEntry& vessel : document.vessels) {
        const ScaleEntry* scale = entryCalled(document.scales, vessel.scale);
        const auto same = [&](const KnownVessel& each) { return each.name == vessel.name; };
        if (scale == nullptr || std::ranges::any_of(known.vessels, same)) continue;
        entries.push_back(emptyVessel(vessel, *scale));
        complete(entries.back(), adding);
    }
    return entries;
}

Result<std::size_t> recordDocument(Kitchen& kitchen, const RecipeDocument& document,
                                   const std::string& recipe, const Adding& adding) {
    const auto known = kitchen.equipmentEntries();
    if (!known) return fail(known.error());
    for (const LedgerEntry& entry : equipmentEntriesOf(document, equipmentOf(*known), adding))
        if (auto recorded = kitchen.record(entry); !recorded) return fail(recorded.error());
    const auto there = inLedger(kitchen, document);
    if (!there) return fail(there.error());
    const auto entries = ledgerEntriesOf(document, recipe, adding, *there);
    for (const LedgerEntry& entry : entries)
        if (auto recorded = kitchen.record(entry); !recorded) return fail(recorded.error());
    return entries.size();
}

}  // namespace nettare
