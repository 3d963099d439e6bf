#include "db/kitchen/migrations.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <filesystem>

#include "db/kitchen/copy_database.h"
#include "db/kitchen/kitchen_errors.h"

namespace nettare {

namespace {

/// A step that ends the transaction would take the safety of all others with it.
void runStep(SQLite::Database& database, const SqlStep& step) {
    database.exec(std::string{step.text});
    if (sqlite3_get_autocommit(database.getHandle()) != 0)
        throw SQLite::Exception{"the step ended the transaction", SQLITE_ERROR};
}

void checkReferences(SQLite::Database& database) {
    SQLite::Statement check{database, "PRAGMA foreign_key_check"};
    if (check.executeStep())
        throw SQLite::Exception{
            "a reference of " + check.getColumn(0).getString() + " leads nowhere",
            SQLITE_CONSTRAINT};
}

/// `running` names the step at work, for whoever catches.
void runAll(SQLite::Database& database, std::span<const SqlStep> steps,
            const std::function<void()>& finish, std::string_view& running) {
    SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
    for (const SqlStep& step : steps.subspan(static_cast<std::size_t>(formatOf(database)))) {
        running = step.name;
        runStep(database, step);
    }
    running = "the last look";
    finish();
    checkReferences(database);
    database.exec("PRAGMA user_version = " + std::to_string(steps.size()));
    transaction.commit();
}

bool isOfTheDisk(int answer) {
    const int sqliteCode = answer & 0xff;
    return sqliteCode == SQLITE_FULL || sqliteCode == SQLITE_BUSY || sqliteCode == SQLITE_IOERR;
}

/// A name that is free, so that a copy made before stays.
std::string safetyName(const std::string& path, std::size_t format) {
    std::string name = path + ".before-" + std::to_string(format);
    std::error_code ignored;
    if (!std::filesystem::exists(name, ignored)) return name;
    int number = 2;
    while (std::filesystem::exists(name + "-" + std::to_string(number), ignored)) ++number;
    return name + "-" + std::to_string(number);
}

}  // namespace

int formatOf(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

Result<void> migrate(SQLite::Database& database, const std::string& path,
                     std::span<const SqlStep> steps, const std::function<void()>& finish) {
    std::string_view running = "the first look";
    try {
        runAll(database, steps, finish, running);
        return {};
    } catch (const SQLite::Exception& cause) {
        if (isOfTheDisk(cause.getErrorCode())) return fail(kitchenError(path, cause));
        return fail(errorIn(path, ErrorCode::MigrationFailed)
                        .with("found", std::to_string(formatOf(database)))
                        .with("known", std::to_string(steps.size()))
                        .with("step", running)
                        .with("reason", cause.what()));
    }
}

Result<void> bringUpToDate(SQLite::Database& database, const std::string& path,
                           std::span<const SqlStep> steps, const std::function<void()>& finish) {
    if (static_cast<std::size_t>(formatOf(database)) >= steps.size()) return {};
    const std::string copy = safetyName(path, steps.size());
    if (auto copied = copyDatabase(database, copy); !copied) return copied;
    auto migrated = migrate(database, path, steps, finish);
    if (!migrated) removeDatabase(copy);
    return migrated;
}

}  // namespace nettare
