#include "db/kitchen/store_verify.h"

#include "db/kitchen/verify_pages.h"
#include "db/kitchen/verify_parts.h"

namespace nettare {

namespace {

void addPages(const KitchenStore& store, const std::vector<std::string>& wrong,
              KitchenCheck& check) {
    for (const std::string& found : wrong)
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
    auto beside = lookAtPagesBeside(store);
    if (!beside.valid()) addPages(store, wrongPages(store.database), check);
    for (const auto part : {checkForeignKeys, checkLedger, checkFoods, checkOwnFoods, checkPhotos,
                            checkRevisions, checkDrafts})
        look(store, check, part);
    if (beside.valid()) addPages(store, beside.get(), check);
    return check;
}

}  // namespace nettare
