#include "db/kitchen/read_ledger.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <utility>

#include "core/recipe/words.h"
#include "core/support/text.h"
#include "db/kitchen/entry_rows.h"
#include "db/kitchen/store_ledger.h"

namespace nettare {

namespace {

/// Beyond every sequence.
constexpr std::int64_t kPastTheEnd = std::numeric_limits<std::int64_t>::max();

/// Readings of a series that get their memory at once.
constexpr std::int64_t kMostTogether = 20'000;

/// Selects the entries of `base` (a query of sequences) with those that they name, whatever speaks
/// of one of these and of what took its place, what each of them names, and whatever else the query
/// `more` selects. What a net, a ratio and what became of them follow from is all there.
std::string withRelated(const std::string& base, const std::string& more = "") {
    return "WITH RECURSIVE base (sequence) AS (" + base +
           "), told (sequence) AS ("
           "SELECT sequence FROM base UNION "
           "SELECT named FROM base JOIN ledger_reference USING (sequence) UNION "
           "SELECT spoken.sequence FROM told JOIN ledger_reference AS spoken "
           "ON spoken.named = told.sequence AND spoken.speaks = 1) "
           "SELECT sequence, entry, hash FROM ledger WHERE sequence IN ("
           "SELECT sequence FROM told UNION ALL "
           "SELECT named FROM told JOIN ledger_reference USING (sequence)" +
           more + ") ORDER BY sequence";
}

/// Selects the entries of `base` with those that they name and what speaks of one of these. Of
/// readings that are no ratios that is enough, and a long series is read in three quarters of the
/// time.
std::string withNamed(const std::string& base) {
    return "WITH base (sequence) AS (" + base +
           "), named (sequence) AS MATERIALIZED ("
           "SELECT sequence FROM base UNION "
           "SELECT named FROM base JOIN ledger_reference USING (sequence)) "
           "SELECT sequence, entry, hash FROM ledger WHERE sequence IN ("
           "SELECT sequence FROM named UNION ALL "
           "SELECT spoken.sequence FROM named JOIN ledger_reference AS spoken "
           "ON spoken.named = named.sequence AND spoken.speaks = 1) ORDER BY sequence";
}

/// Sequences as a JSON array, for json_each().
std::string listOf(const std::vector<std::int64_t>& sequences) {
    std::string list = "[";
    for (const std::int64_t sequence : sequences) {
        if (list.size() > 1) list += ',';
        list += std::to_string(sequence);
    }
    return list + "]";
}

Result<Entries> entriesWithRelated(KitchenStore& store,
                                   const std::vector<std::int64_t>& sequences) {
    static const std::string kSql =
        withRelated("SELECT value FROM json_each(?)",
                    " UNION ALL SELECT (SELECT min(sequence) FROM ledger_reference AS first "
                    "WHERE first.named = base.sequence AND first.speaks = 0) FROM base");
    Query row = store.query(kSql.c_str());
    row.with(listOf(sequences));
    return entriesIn(store, row);
}

/// Whether the ledger still has that entry; it grows only, unless somebody cut it.
bool isThere(KitchenStore& store, const LedgerEnd& entry) {
    Query row = store.query("SELECT 1 FROM ledger WHERE sequence = ? AND hash = ?");
    row.with(std::int64_t{entry.sequence}).with(entry.hash);
    return row.next();
}

bool isIndication(EntryKind kind) {
    return kind == EntryKind::Shown || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

SeriesKind seriesKindOf(const std::string& found) {
    for (const Word<SeriesKind>& word : kSeriesWords)
        if (word.word == found) return word.meaning;
    return SeriesKind::PerPiece;
}

std::vector<std::string> tagsOf(KitchenStore& store, std::int64_t series) {
    std::vector<std::string> tags;
    Query row = store.query("SELECT tag FROM series_tag WHERE series = ? ORDER BY tag");
    row.with(series);
    while (row.next()) tags.push_back(row.text(0));
    return tags;
}

}  // namespace

Result<Entries> allEntries(KitchenStore& store) {
    Query row = store.query("SELECT sequence, entry, hash FROM ledger ORDER BY sequence");
    return entriesIn(store, row);
}

Result<void> eachEntry(KitchenStore& store, const std::function<bool(const ChainedEntry&)>& each) {
    Query row = store.query("SELECT sequence, entry, hash FROM ledger ORDER BY sequence");
    while (row.next()) {
        const auto entry = entryIn(store, row);
        if (!entry) return fail(entry.error());
        if (!each(*entry)) break;
    }
    return {};
}

Result<Entries> entriesBefore(KitchenStore& store, long long before, int most) {
    std::vector<std::int64_t> sequences;
    {
        Query row = store.query(
            "SELECT sequence, entry, hash FROM ledger WHERE sequence < ? ORDER BY sequence DESC");
        row.with(before > 0 ? before : kPastTheEnd);
        while (static_cast<int>(sequences.size()) < most && row.next()) {
            const auto entry = entryIn(store, row);
            if (!entry) return fail(entry.error());
            if (isIndication(entry->entry.kind)) sequences.push_back(entry->sequence);
        }
    }
    return entriesWithRelated(store, sequences);
}

Result<Entries> entriesOfSeries(KitchenStore& store, const SeriesKey& key) {
    static const std::string kBase = "SELECT sequence FROM series_entry WHERE series = ?";
    static const std::string kSql = withNamed(kBase);
    static const std::string kPairsSql = withRelated(kBase);
    Query series = store.query(
        "SELECT id, readings FROM series WHERE folded = ? AND kind = ? AND counted = ?");
    series.with(foldedWhat(key.what)).with(std::string{wordFor(key.kind, kSeriesWords)});
    series.with(key.of);
    if (!series.next()) return Entries{};
    Query row = store.query((key.kind == SeriesKind::Ratio ? kPairsSql : kSql).c_str());
    row.with(series.number(0));
    // Most were weighed with a tare of their own. The number is of the file, and not to be trusted.
    const auto readings = std::min(series.number(1), kMostTogether);
    return entriesIn(store, row, 2 * static_cast<std::size_t>(readings));
}

Result<const EquipmentRead*> equipmentIn(KitchenStore& store) {
    EquipmentRead& known = store.equipment;
    if (known.upTo.sequence != 0 && !isThere(store, known.upTo)) known = {};
    LedgerEnd end = ledgerEndIn(store);
    if (end.sequence == known.upTo.sequence) return &known;
    // From the start it is quicker by way of the equipment, of which there is little.
    Query row = store.query(known.upTo.sequence == 0
                                ? "SELECT sequence, entry, hash FROM ledger WHERE sequence IN ("
                                  "SELECT sequence FROM ledger_equipment UNION ALL "
                                  "SELECT spoken.sequence FROM ledger_equipment AS equipment "
                                  "JOIN ledger_reference AS spoken ON spoken.speaks = 1 "
                                  "AND spoken.named = equipment.sequence) "
                                  "AND sequence > ? AND sequence <= ? ORDER BY sequence"
                                : "SELECT sequence, entry, hash FROM ledger "
                                  "WHERE sequence > ? AND sequence <= ? AND (sequence IN "
                                  "ledger_equipment OR EXISTS (SELECT * FROM ledger_reference AS "
                                  "spoken JOIN ledger_equipment ON ledger_equipment.sequence = "
                                  "spoken.named WHERE spoken.sequence = ledger.sequence AND "
                                  "spoken.speaks = 1)) ORDER BY sequence");
    row.with(std::int64_t{known.upTo.sequence}).with(std::int64_t{end.sequence});
    auto more = entriesIn(store, row);
    if (!more) return fail(more.error());
    EquipmentRead read = std::exchange(known, {});
    if (!more->empty()) {
        std::ranges::move(*more, std::back_inserter(read.entries));
        read.checks = ScaleChecks{read.entries};
    }
    read.upTo = std::move(end);
    known = std::move(read);
    return &known;
}

Result<Entries> entriesAboutId(KitchenStore& store, const std::string& id) {
    std::vector<std::int64_t> sequences;
    {
        // No character of a UUID comes after 'g'.
        Query row =
            store.query("SELECT sequence FROM ledger WHERE id >= ? AND id < ? || 'g' LIMIT 2");
        row.with(lowerAscii(id)).with(lowerAscii(id));
        while (row.next()) sequences.push_back(row.number(0));
    }
    if (id.empty() || sequences.size() != 1)
        return fail(store.error(ErrorCode::ReadingNotFound).with("found", id));
    return entriesWithRelated(store, sequences);
}

Result<std::vector<SeriesSummary>> seriesIn(KitchenStore& store) {
    std::vector<SeriesSummary> all;
    Query row = store.query(
        "SELECT series.id, what, kind, counted, readings, json_extract(entry, '$.at') FROM series "
        "JOIN ledger ON ledger.sequence = newest ORDER BY folded, kind, counted");
    while (row.next())
        all.push_back({{row.text(1), seriesKindOf(row.text(2)), row.text(3)},
                       static_cast<int>(row.number(4)),
                       row.text(5),
                       tagsOf(store, row.number(0))});
    return all;
}

}  // namespace nettare
