#include "core/support/sha256.h"
#include "db/kitchen/verify_parts.h"

namespace nettare {

namespace {

/// Whether the text is the canonical entry of that place in the chain.
bool isEntryAt(const std::string& text, const LedgerEnd& before) {
    const auto json = parseJson(text);
    if (!json) return false;
    const auto entry = readEntry(*json);
    return entry && entry->sequence == before.sequence + 1 && entry->previous == before.hash &&
           writeJson(entryJson(entry->entry, entry->sequence, entry->previous)) == text;
}

}  // namespace

void checkLedger(KitchenStore& store, KitchenCheck& check) {
    LedgerEnd head;
    Query row = store.query("SELECT sequence, entry, hash FROM ledger ORDER BY sequence");
    while (row.next()) {
        const std::string text = row.text(1);
        const bool follows = row.number(0) == head.sequence + 1 && isEntryAt(text, head);
        if (!follows || sha256(text) != row.text(2)) {
            check.faults.push_back(store.error(ErrorCode::LedgerBroken)
                                       .with("found", std::to_string(head.sequence + 1)));
            return;
        }
        head = {row.number(0), row.text(2)};
        ++check.ledgerEntries;
        check.ledgerHead = head.hash;
    }
}

}  // namespace nettare
