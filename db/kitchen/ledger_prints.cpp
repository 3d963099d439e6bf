#include "db/kitchen/ledger_prints.h"

#include <functional>
#include <unordered_map>

#include "core/ledger/ledger_reading.h"
#include "core/recipe/words.h"
#include "db/kitchen/kitchen_store.h"

namespace nettare {

namespace {

/// The last steps of a 64-bit generator (splitmix64, S. Vigna, public domain, from memory).
std::uint64_t mixed(std::uint64_t value) {
    value = (value ^ (value >> 30U)) * 0xBF58476D1CE4E5B9U;
    value = (value ^ (value >> 27U)) * 0x94D049BB133111EBU;
    return value ^ (value >> 31U);
}

std::uint64_t printOf(std::string_view text) {
    return std::hash<std::string_view>{}(text);
}

/// Of an ordered pair.
std::uint64_t paired(std::uint64_t a, std::uint64_t b) {
    return mixed(a + mixed(b + 0x9E3779B97F4A7C15U));
}

std::uint64_t printAt(std::string_view text, std::int64_t sequence) {
    return paired(printOf(text), static_cast<std::uint64_t>(sequence));
}

std::uint64_t printOfReference(std::uint64_t named, bool speaks, std::int64_t sequence) {
    return paired(paired(named, speaks ? 1 : 0), static_cast<std::uint64_t>(sequence));
}

std::uint64_t printOfSeries(std::string_view folded, std::string_view kind, std::string_view of) {
    return paired(paired(printOf(folded), printOf(kind)), printOf(of));
}

bool isEquipmentKind(EntryKind kind) {
    return kind == EntryKind::Scale || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

/// What an entry names beside what it speaks of counts once for each entry named.
std::uint64_t referencesOf(const LedgerEntry& entry, std::int64_t sequence) {
    const std::string before = entry.series ? entry.series->before : std::string{};
    std::uint64_t sum = 0;
    if (!entry.refersTo.empty()) sum += printOfReference(printOf(entry.refersTo), true, sequence);
    if (!entry.tare.empty()) sum += printOfReference(printOf(entry.tare), false, sequence);
    if (!entry.takenFrom.empty() && entry.takenFrom != entry.tare)
        sum += printOfReference(printOf(entry.takenFrom), false, sequence);
    if (!before.empty() && before != entry.tare && before != entry.takenFrom)
        sum += printOfReference(printOf(before), false, sequence);
    return sum;
}

/// The sum over an index of texts that is read in its own order; nothing where that is broken.
std::optional<std::uint64_t> sumInOrder(Query row) {
    std::uint64_t sum = 0;
    std::string before;
    bool first = true;
    while (row.next()) {
        std::string text = row.text(0);
        if (!first && text <= before) return std::nullopt;
        sum += printAt(text, row.number(1));
        before = std::move(text);
        first = false;
    }
    return sum;
}

std::uint64_t sumOfIndications(KitchenStore& store) {
    std::uint64_t sum = 0;
    Query row = store.query(
        "SELECT coalesce(recipe, ''), coalesce(indication, ''), sequence FROM ledger "
        "INDEXED BY ledger_by_indication ORDER BY recipe, indication");
    while (row.next()) sum += paired(printOf(row.text(0)), printAt(row.text(1), row.number(2)));
    return sum;
}

std::uint64_t sumOfReferences(KitchenStore& store, const std::vector<std::uint64_t>& idPrints) {
    std::uint64_t sum = 0;
    Query row = store.query("SELECT named, speaks, sequence FROM ledger_reference");
    while (row.next()) {
        const auto place = static_cast<std::size_t>(row.number(0) - 1);
        const std::uint64_t named = place < idPrints.size() ? idPrints[place] : 0;
        sum += printOfReference(named, row.number(1) == 1, row.number(2));
    }
    return sum;
}

std::uint64_t sumOfEquipment(KitchenStore& store) {
    std::uint64_t sum = 0;
    Query row = store.query("SELECT sequence FROM ledger_equipment");
    while (row.next()) sum += mixed(static_cast<std::uint64_t>(row.number(0)));
    return sum;
}

/// A row of the table of series.
struct ListedSeries {
    std::uint64_t print = 0;
    std::int64_t readings = 0, newest = 0;  ///< left when those of its entries are taken off
};

std::unordered_map<std::int64_t, ListedSeries> listedSeries(KitchenStore& store) {
    std::unordered_map<std::int64_t, ListedSeries> listed;
    Query row = store.query("SELECT id, folded, kind, counted, readings, newest FROM series");
    while (row.next())
        listed[row.number(0)] = {printOfSeries(row.text(1), row.text(2), row.text(3)),
                                 row.number(4), row.number(5)};
    return listed;
}

/// Whether each series is called as its newest entry calls the food.
bool areSeriesCalledRight(KitchenStore& store) {
    Query row = store.query(
        "SELECT count(*) FROM series LEFT JOIN ledger ON ledger.sequence = newest "
        "WHERE what IS NOT json_extract(entry, '$.what')");
    return row.next() && row.number(0) == 0;
}

bool areSeriesRight(KitchenStore& store, const LedgerPrints& ofEntries) {
    if (!areSeriesCalledRight(store)) return false;
    auto listed = listedSeries(store);
    std::unordered_map<std::int64_t, std::int64_t> newest;
    std::uint64_t sum = 0;
    {
        Query row = store.query("SELECT series, sequence FROM series_entry");
        while (row.next()) {
            ListedSeries& series = listed[row.number(0)];
            --series.readings;
            newest[row.number(0)] = row.number(1);  // they come in their order
            sum += paired(series.print, static_cast<std::uint64_t>(row.number(1)));
        }
    }
    for (const auto& [id, series] : listed)
        if (series.readings != 0 || series.newest != newest[id]) return false;
    std::size_t tags = 0;
    Query row = store.query("SELECT series, tag FROM series_tag");
    for (; row.next(); ++tags)
        if (!ofEntries.tags.contains(paired(listed[row.number(0)].print, printOf(row.text(1)))))
            return false;
    return sum == ofEntries.series && tags == ofEntries.tags.size();
}

}  // namespace

void LedgerPrints::add(const LedgerEntry& entry, std::int64_t sequence, std::string_view hash) {
    hashes += printAt(hash, sequence);
    ids += printAt(entry.id, sequence);
    idPrints.push_back(printOf(entry.id));
    indications += paired(printOf(entry.recipe), printAt(entry.indication, sequence));
    references += referencesOf(entry, sequence);
    if (isEquipmentKind(entry.kind)) equipment += mixed(static_cast<std::uint64_t>(sequence));
    const auto key = seriesKeyOf(entry);
    if (!key) return;
    const std::uint64_t print =
        printOfSeries(foldedWhat(key->what), wordFor(key->kind, kSeriesWords), key->of);
    series += paired(print, static_cast<std::uint64_t>(sequence));
    for (const std::string& tag : entry.series->tags) tags.insert(paired(print, printOf(tag)));
}

void LedgerPrints::append(const LedgerPrints& next) {
    hashes += next.hashes;
    ids += next.ids;
    indications += next.indications;
    references += next.references;
    equipment += next.equipment;
    series += next.series;
    tags.insert(next.tags.begin(), next.tags.end());
    idPrints.insert(idPrints.end(), next.idPrints.begin(), next.idPrints.end());
}

std::vector<std::string> wrongIndexes(KitchenStore& store, const LedgerPrints& ofEntries) {
    std::vector<std::string> wrong;
    const auto expect = [&](bool isRight, const char* what) {
        if (!isRight) wrong.push_back(std::string{what} + " does not fit the entries");
    };
    expect(sumInOrder(store.query("SELECT hash, sequence FROM ledger INDEXED BY "
                                  "sqlite_autoindex_ledger_1 ORDER BY hash")) == ofEntries.hashes,
           "the index of hashes");
    expect(sumInOrder(store.query("SELECT id, sequence FROM ledger INDEXED BY ledger_by_id "
                                  "ORDER BY id")) == ofEntries.ids,
           "the index ledger_by_id");
    expect(sumOfIndications(store) == ofEntries.indications, "the index ledger_by_indication");
    expect(sumOfReferences(store, ofEntries.idPrints) == ofEntries.references,
           "the table ledger_reference");
    expect(sumOfEquipment(store) == ofEntries.equipment, "the table ledger_equipment");
    expect(areSeriesRight(store, ofEntries), "the list of series");
    return wrong;
}

}  // namespace nettare
