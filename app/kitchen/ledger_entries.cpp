#include "app/kitchen/ledger_entries.h"

#include <algorithm>

namespace nettare {

namespace {

template <class Entry>
const Entry* entryCalled(const std::vector<Entry>& entries, const std::string& id) {
    const auto found = std::ranges::find(entries, id, &Entry::id);
    return found == entries.end() ? nullptr : &*found;
}

/// How many pieces lay on the scale, and in which vessel: what the reading says of its gross.
void addReading(const RecipeDocument& document, LedgerEntry& entry) {
    const auto reading =
        std::ranges::find(document.readings, entry.indication, &ReadingEntry::gross);
    if (reading == document.readings.end()) return;
    entry.pieces = reading->pieces;
    if (!reading->vessel) return;
    const VesselEntry* vessel = entryCalled(document.vessels, *reading->vessel);
    if (vessel != nullptr) entry.vessel = vessel->name;
}

}  // namespace

std::vector<LedgerEntry> ledgerEntriesOf(const RecipeDocument& document, const std::string& recipe,
                                         const Adding& adding) {
    std::vector<LedgerEntry> entries;
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
        addReading(document, entry);
        entries.push_back(std::move(entry));
    }
    return entries;
}

}  // namespace nettare
