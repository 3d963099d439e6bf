#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Savepoint.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/ledger/scale_checks.h"
#include "db/kitchen/hold.h"
#include "db/kitchen/kitchen.h"
#include "db/kitchen/kitchen_errors.h"
#include "db/kitchen/place.h"
#include "db/kitchen/query.h"

namespace nettare {

/// A draft as the journal knows it, with the document after its first `cursor` edits.
struct DraftState {
    std::string recipe;
    std::vector<Edit> edits;
    std::size_t cursor = 0;
    Json document;
};

/// The entries Scale, Checked and Vessel and those that speak of them, as far as the ledger was
/// read; it only grows, so that the next reading goes on from there.
struct EquipmentRead {
    LedgerEnd upTo;
    std::vector<ChainedEntry> entries;
    ScaleChecks checks;
};

/// An open kitchen. The functions of the store_*.h beside this work on it; they throw
/// SQLite::Exception, which Kitchen turns into errors.
struct KitchenStore {
    std::string path;          ///< as it was asked for; empty in memory
    std::optional<Hold> hold;  ///< given free after the database is closed
    SQLite::Database database;
    std::string file;       ///< where it stands, when it can be written
    FileIdentity identity;  ///< of that file
    KitchenAccess access = KitchenAccess::Write;
    bool writable = true;
    std::string heldBy;
    std::map<const char*, SQLite::Statement> statements;  ///< by the address of their literal
    bool together = false;                ///< changes are parts of one transaction that is open
    std::optional<DraftState> lastDraft;  ///< the one that was journalled last
    /// Food versions that were read, by their hash: they never change, and one revision after the
    /// other pins the same ones.
    std::map<std::string, TableFood> foodVersions;
    EquipmentRead equipment;  ///< see equipmentIn() of read_ledger.h

    KitchenStore(std::string at, SQLite::Database opened)
        : path{std::move(at)}, database{std::move(opened)} {}

    /// One use of a statement that is prepared once.
    [[nodiscard]] Query query(const char* sql) {
        auto found = statements.find(sql);
        if (found == statements.end())
            found = statements.emplace(sql, SQLite::Statement{database, sql}).first;
        return Query{found->second};
    }

    [[nodiscard]] Error error(ErrorCode code) const { return errorIn(path, code); }
};

/// A transaction that is sure to write from its first statement on, or a part of the one that is
/// open; left without commit(), it is rolled back.
class WriteTransaction {
public:
    explicit WriteTransaction(KitchenStore& store) {
        if (store.together)
            part_.emplace(store.database, "part");
        else
            whole_.emplace(store.database, SQLite::TransactionBehavior::IMMEDIATE);
    }
    void commit() {
        if (part_)
            part_->release();
        else
            whole_->commit();
    }

private:
    std::optional<SQLite::Transaction> whole_;
    std::optional<SQLite::Savepoint> part_;
};

/// See Kitchen::together().
[[nodiscard]] Result<void> changeTogether(KitchenStore& store,
                                          const std::function<Result<void>()>& changes);

/// Why nothing can be changed, where nothing can. Fails: KitchenHeld, KitchenOpenToRead,
/// KitchenNotWritable, KitchenMissing (the file was removed or moved away meanwhile).
[[nodiscard]] Result<void> checkWritable(const KitchenStore& store);

}  // namespace nettare
