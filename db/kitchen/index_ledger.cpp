#include "db/kitchen/index_ledger.h"

#include "core/recipe/words.h"
#include "db/kitchen/stored_entry.h"

namespace nettare {

namespace {

bool isEquipment(EntryKind kind) {
    return kind == EntryKind::Scale || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

/// The id of the series of that entry, made where it is the first.
std::int64_t seriesWith(KitchenStore& store, const SeriesKey& key, std::int64_t sequence) {
    Query row = store.query(
        "INSERT INTO series (folded, kind, counted, what, readings, newest) "
        "VALUES (?, ?, ?, ?, 1, ?) ON CONFLICT (folded, kind, counted) DO UPDATE SET "
        "what = excluded.what, readings = readings + 1, newest = excluded.newest RETURNING id");
    row.with(foldedWhat(key.what)).with(std::string{wordFor(key.kind, kSeriesWords)});
    row.with(key.of).with(key.what).with(sequence);
    std::int64_t id = 0;
    while (row.next()) id = row.number(0);
    return id;
}

void indexSeries(KitchenStore& store, const LedgerEntry& entry, std::int64_t sequence) {
    const auto key = seriesKeyOf(entry);
    if (!key) return;
    const std::int64_t series = seriesWith(store, *key, sequence);
    store.query("INSERT INTO series_entry VALUES (?, ?)").with(series).with(sequence).run();
    for (const std::string& tag : entry.series->tags)
        store.query("INSERT OR IGNORE INTO series_tag VALUES (?, ?)").with(series).with(tag).run();
}

}  // namespace

void indexEntry(KitchenStore& store, const ChainedEntry& entry,
                const std::vector<NamedEntry>& names) {
    for (const NamedEntry& name : names)
        store.query("INSERT INTO ledger_reference VALUES (?, ?, ?)")
            .with(name.sequence)
            .with(std::int64_t{name.speaks ? 1 : 0})
            .with(entry.sequence)
            .run();
    if (isEquipment(entry.entry.kind))
        store.query("INSERT INTO ledger_equipment VALUES (?)").with(entry.sequence).run();
    indexSeries(store, entry.entry, entry.sequence);
}

void fillLedgerIndexes(KitchenStore& store) {
    store.database.exec(
        "DELETE FROM series_tag; DELETE FROM series_entry; DELETE FROM series; "
        "DELETE FROM ledger_equipment; DELETE FROM ledger_reference");
    Query row = store.query("SELECT entry, hash FROM ledger ORDER BY sequence");
    while (row.next())
        if (const auto entry = entryFrom(row.text(0), row.text(1)))
            indexEntry(store, *entry, namesOfKept(store, entry->entry));
}

}  // namespace nettare
