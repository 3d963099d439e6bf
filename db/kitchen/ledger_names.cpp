#include "db/kitchen/ledger_names.h"

#include <algorithm>
#include <utility>

namespace nettare {

namespace {

/// What the ledger has of an id.
struct KnownEntry {
    std::int64_t sequence = 0;  ///< 0: no such entry
    std::string kind;
    bool inSeries = false;
};

KnownEntry knownEntry(KitchenStore& store, const std::string& id) {
    Query row = store.query(
        "SELECT sequence, json_extract(entry, '$.kind'), "
        "json_extract(entry, '$.series.kind') IS NOT NULL FROM ledger WHERE id = ?");
    row.with(id);
    if (!row.next()) return {};
    return {row.number(0), row.text(1), row.number(2) != 0};
}

bool isIndicationKind(const std::string& kind) {
    return kind == "shown" || kind == "check" || kind == "vessel";
}

/// What the ledger says of an indication so far; a corrected reading is superseded by that.
struct SaidOfIt {
    bool superseded = false, replaced = false, leftOut = false, asWeighed = false;
};

SaidOfIt saidOf(KitchenStore& store, std::int64_t sequence) {
    SaidOfIt said;
    Query row = store.query(
        "SELECT json_extract(entry, '$.kind') FROM ledger_reference AS reference JOIN ledger "
        "USING (sequence) WHERE reference.named = ? AND reference.speaks = 1 ORDER BY sequence");
    row.with(sequence);
    while (row.next()) {
        const std::string kind = row.text(0);
        said.replaced = said.replaced || kind == "shown";
        said.superseded = said.superseded || said.replaced || kind == "superseded";
        if (kind == "taken in") said.asWeighed = !std::exchange(said.leftOut, false);
        if (kind == "left out") {
            said.leftOut = true;
            said.asWeighed = false;
        }
    }
    return said;
}

/// Whether an entry of that kind may speak of what stands so.
Result<void> checkSaying(KitchenStore& store, const LedgerEntry& entry, const KnownEntry& known) {
    const SaidOfIt said = saidOf(store, known.sequence);
    const bool aboutCounting = entry.kind == EntryKind::Superseded ||
                               entry.kind == EntryKind::LeftOut || entry.kind == EntryKind::TakenIn;
    // What was taken back may be replaced afterwards, but once only: both would count.
    const bool again = entry.kind == EntryKind::Shown && said.replaced;
    if (again || (aboutCounting && said.superseded))
        return fail(store.error(ErrorCode::ReadingOverruled).with("found", entry.refersTo));
    const bool counts = !said.leftOut && !said.superseded;
    // Of a reading of a series that counts it may be said, once, that it is as weighed.
    const bool saysNothing = !known.inSeries || said.asWeighed;
    if (counts &&
        ((entry.kind == EntryKind::TakenIn && saysNothing) || entry.kind == EntryKind::Reasoned))
        return fail(store.error(ErrorCode::ReadingNotLeftOut).with("found", entry.refersTo));
    return {};
}

struct Name {
    std::string id;
    bool speaks = false;
};

std::vector<Name> namesIn(const LedgerEntry& entry) {
    std::vector<Name> names{{entry.refersTo, true},
                            {entry.tare, false},
                            {entry.takenFrom, false},
                            {entry.series ? entry.series->before : std::string{}, false}};
    std::erase_if(names, [](const Name& name) { return name.id.empty(); });
    return names;
}

void addOnce(std::vector<NamedEntry>& named, NamedEntry one) {
    if (std::ranges::find(named, one) == named.end()) named.push_back(one);
}

}  // namespace

Result<std::vector<NamedEntry>> namesOf(KitchenStore& store, const LedgerEntry& entry) {
    if (knownEntry(store, entry.id).sequence != 0)
        return fail(store.error(ErrorCode::LedgerIdUsed).with("found", entry.id));
    std::vector<NamedEntry> named;
    for (const Name& name : namesIn(entry)) {
        const KnownEntry known = knownEntry(store, name.id);
        if (known.sequence == 0)
            return fail(store.error(ErrorCode::LedgerEntryNotFound).with("found", name.id));
        if (!isIndicationKind(known.kind))
            return fail(store.error(ErrorCode::ReadingNotFound).with("found", name.id));
        if (name.speaks)
            if (const auto fits = checkSaying(store, entry, known); !fits)
                return fail(fits.error());
        addOnce(named, {known.sequence, name.speaks});
    }
    return named;
}

std::vector<NamedEntry> namesOfKept(KitchenStore& store, const LedgerEntry& entry) {
    std::vector<NamedEntry> named;
    for (const Name& name : namesIn(entry))
        if (const std::int64_t sequence = knownEntry(store, name.id).sequence; sequence != 0)
            addOnce(named, {sequence, name.speaks});
    return named;
}

}  // namespace nettare
