#include "db/kitchen/store_ledger.h"

#include "core/support/sha256.h"
#include "db/kitchen/index_ledger.h"
#include "db/kitchen/ledger_names.h"

namespace nettare {

namespace {

/// The entry at the end of the chain; it was read back from its own text, so that whatever is
/// stored can be read.
Result<ChainedEntry> chained(const LedgerEntry& entry, const LedgerEnd& end, std::string& text) {
    const Json json = entryJson(entry, end.sequence + 1, end.hash);
    auto made = readEntry(json);
    if (!made) return fail(made.error());
    text = writeJson(json);
    made->hash = sha256(text);
    return made;
}

}  // namespace

LedgerEnd ledgerEndIn(KitchenStore& store) {
    Query row = store.query("SELECT sequence, hash FROM ledger ORDER BY sequence DESC LIMIT 1");
    if (!row.next()) return {};
    return {row.number(0), row.text(1)};
}

bool hasHash(KitchenStore& store, const std::string& hash) {
    Query row = store.query("SELECT 1 FROM ledger WHERE hash = ?");
    row.with(hash);
    return row.next();
}

Result<ChainedEntry> appendEntry(KitchenStore& store, const LedgerEntry& entry) {
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    WriteTransaction transaction{store};
    const auto names = namesOf(store, entry);
    if (!names) return fail(names.error());
    std::string text;
    auto made = chained(entry, ledgerEndIn(store), text);
    if (!made) return made;
    store.query("INSERT INTO ledger (sequence, hash, entry) VALUES (?, ?, ?)")
        .with(made->sequence)
        .with(made->hash)
        .with(text)
        .run();
    indexEntry(store, *made, *names);
    transaction.commit();
    return made;
}

}  // namespace nettare
