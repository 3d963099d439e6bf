#include "db/kitchen/verify_pages.h"

#include <memory>

#include "db/kitchen/store_ledger.h"

namespace nettare {

namespace {

constexpr long long kLongLedger = 10'000;
constexpr int kSecondPatienceMs = 2000;

/// Adds the rows of a check of SQLite that are not "ok".
void runCheck(SQLite::Database& database, const std::string& pragma,
              std::vector<std::string>& wrong) {
    SQLite::Statement row{database, "PRAGMA " + pragma};
    while (row.executeStep())
        if (std::string found = row.getColumn(0).getString(); found != "ok")
            wrong.push_back(std::move(found));
}

/// All tables with rows of their own but the ledger.
std::vector<std::string> otherTables(SQLite::Database& database) {
    std::vector<std::string> names;
    SQLite::Statement row{database,
                          "SELECT name FROM sqlite_schema WHERE type = 'table' AND rootpage > 0 "
                          "AND name <> 'ledger' ORDER BY name"};
    while (row.executeStep()) names.push_back(row.getColumn(0).getString());
    return names;
}

void checkAllPages(SQLite::Database& database, std::vector<std::string>& wrong) {
    // The ledger's own constraint is that an entry is JSON, which the chain's check reads anyway.
    database.exec("PRAGMA ignore_check_constraints = ON");
    runCheck(database, "quick_check(20)", wrong);
    database.exec("PRAGMA ignore_check_constraints = OFF");
    if (!wrong.empty()) return;
    for (const std::string& name : otherTables(database))
        runCheck(database, "integrity_check(\"" + name + "\")", wrong);
}

/// Null where there is none to be had.
std::shared_ptr<SQLite::Database> secondConnection(SQLite::Database& first) {
    const char* file = sqlite3_db_filename(first.getHandle(), "main");
    if (file == nullptr || *file == '\0') return nullptr;
    try {
        auto second =
            std::make_shared<SQLite::Database>(file, SQLite::OPEN_READONLY, kSecondPatienceMs);
        second->exec("PRAGMA cell_size_check = ON");
        static_cast<void>(second->execAndGet("SELECT count(*) FROM sqlite_schema"));
        return second;
    } catch (const SQLite::Exception&) {
        return nullptr;
    }
}

}  // namespace

std::vector<std::string> wrongPages(SQLite::Database& database) {
    std::vector<std::string> wrong;
    try {
        checkAllPages(database, wrong);
    } catch (const SQLite::Exception& cause) {
        wrong.emplace_back(cause.what());
    }
    return wrong;
}

std::future<std::vector<std::string>> lookAtPagesBeside(KitchenStore& store) {
    if (ledgerEndIn(store).sequence < kLongLedger) return {};
    const auto second = secondConnection(store.database);
    if (!second) return {};
    return std::async(std::launch::async, [second] { return wrongPages(*second); });
}

}  // namespace nettare
