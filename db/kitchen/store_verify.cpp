#include "db/kitchen/store_verify.h"

#include <functional>

#include "db/kitchen/verify_parts.h"

namespace nettare {

namespace {

/// SQLite's own look at pages, indexes and constraints.
void checkPages(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("PRAGMA integrity_check(20)");
    while (row.next())
        if (const std::string found = row.text(0); found != "ok")
            check.faults.push_back(store.error(ErrorCode::PagesDamaged).with("reason", found));
}

void checkForeignKeys(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("PRAGMA foreign_key_check");
    while (row.next())
        check.faults.push_back(
            store.error(ErrorCode::PagesDamaged)
                .with("reason", "a row of " + row.text(0) + " refers to none of " + row.text(2)));
}

/// What cannot be read at all is a fault as well, and hides none of the other parts.
void look(KitchenStore& store, KitchenCheck& check,
          void (*part)(KitchenStore& store, KitchenCheck& check)) {
    try {
        part(store, check);
    } catch (const SQLite::Exception& cause) {
        check.faults.push_back(store.error(ErrorCode::PagesDamaged).with("reason", cause.what()));
    }
}

}  // namespace

Result<KitchenCheck> checkKitchen(KitchenStore& store) {
    KitchenCheck check;
    // One reading transaction: all parts see the same state.
    SQLite::Transaction transaction{store.database};
    for (const auto part : {checkPages, checkForeignKeys, checkLedger, checkFoods, checkOwnFoods,
                            checkPhotos, checkRevisions, checkDrafts})
        look(store, check, part);
    return check;
}

}  // namespace nettare
