#include "db/kitchen/store_ledger.h"

#include "core/support/sha256.h"
#include "db/kitchen/stored_json.h"

namespace nettare {

namespace {

bool hasEntry(KitchenStore& store, const std::string& id) {
    Query row = store.query("SELECT 1 FROM ledger WHERE id = ?");
    row.with(id);
    return row.next();
}

Result<void> checkNames(KitchenStore& store, const LedgerEntry& entry) {
    if (hasEntry(store, entry.id))
        return fail(store.error(ErrorCode::LedgerIdUsed).with("found", entry.id));
    if (!entry.refersTo.empty() && !hasEntry(store, entry.refersTo))
        return fail(store.error(ErrorCode::LedgerEntryNotFound).with("found", entry.refersTo));
    return {};
}

/// The entry at the end of the chain; it was read back from its own text, so that whatever is
/// stored can be read.
Result<ChainedEntry> chained(const LedgerEntry& entry, const LedgerHead& head, std::string& text) {
    const Json json = entryJson(entry, head.sequence + 1, head.hash);
    auto made = readEntry(json);
    if (!made) return fail(made.error());
    text = writeJson(json);
    made->hash = sha256(text);
    return made;
}

}  // namespace

LedgerHead ledgerHead(KitchenStore& store) {
    Query row = store.query("SELECT sequence, hash FROM ledger ORDER BY sequence DESC LIMIT 1");
    if (!row.next()) return {};
    return {row.number(0), row.text(1)};
}

Result<ChainedEntry> appendEntry(KitchenStore& store, const LedgerEntry& entry) {
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    WriteTransaction transaction{store};
    if (const auto known = checkNames(store, entry); !known) return fail(known.error());
    std::string text;
    auto made = chained(entry, ledgerHead(store), text);
    if (!made) return made;
    store.query("INSERT INTO ledger (sequence, hash, entry) VALUES (?, ?, ?)")
        .with(made->sequence)
        .with(made->hash)
        .with(text)
        .run();
    transaction.commit();
    return made;
}

Result<std::vector<ChainedEntry>> allEntries(KitchenStore& store) {
    std::vector<ChainedEntry> entries;
    Query row = store.query("SELECT entry, hash FROM ledger ORDER BY sequence");
    while (row.next()) {
        const std::string name = "ledger entry " + std::to_string(entries.size() + 1);
        const auto json = storedJson(store, row.text(0), name);
        if (!json) return fail(json.error());
        auto entry = readEntry(*json);
        if (!entry) return fail(damaged(store.path, name));
        entry->hash = row.text(1);
        entries.push_back(std::move(*entry));
    }
    return entries;
}

}  // namespace nettare
