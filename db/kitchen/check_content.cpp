#include "db/kitchen/check_content.h"

#include <SQLiteCpp/Statement.h>

#include <array>
#include <filesystem>
#include <string_view>

#include "db/kitchen/kitchen_errors.h"
#include "db/kitchen/migrations.h"
#include "db/open_read_only.h"

namespace nettare {

namespace {

struct TableOfFormat {
    std::string_view name;
    int since;  ///< the format that it came with
};

constexpr std::array kTables{
    TableOfFormat{"kitchen", 1},          TableOfFormat{"ledger", 1},
    TableOfFormat{"recipe", 2},           TableOfFormat{"draft", 2},
    TableOfFormat{"draft_base", 2},       TableOfFormat{"draft_edit", 2},
    TableOfFormat{"food_version", 2},     TableOfFormat{"revision", 2},
    TableOfFormat{"revision_food", 2},    TableOfFormat{"recipe_search", 3},
    TableOfFormat{"ledger_end", 6},       TableOfFormat{"ledger_lost", 6},
    TableOfFormat{"ledger_reference", 6}, TableOfFormat{"ledger_equipment", 6},
    TableOfFormat{"series", 6},           TableOfFormat{"series_entry", 6},
    TableOfFormat{"series_tag", 6}};

bool hasTable(SQLite::Database& database, std::string_view name) {
    SQLite::Statement found{database,
                            "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?"};
    found.bind(1, std::string{name});
    return found.executeStep();
}

Result<void> checkTables(SQLite::Database& database, const std::string& path) {
    const int format = formatOf(database);
    for (const TableOfFormat& table : kTables) {
        if (table.since > format || hasTable(database, table.name)) continue;
        if (table.since == 1) return fail(errorIn(path, ErrorCode::NotAKitchen));
        return fail(damaged(path, "the table " + std::string{table.name} + " is missing"));
    }
    return {};
}

std::string identityOf(SQLite::Database& database) {
    return database.execAndGet("SELECT uuid FROM kitchen").getString();
}

/// Empty where the file alone does not tell: its log was being taken in when the power went.
std::string identityWithoutLog(const std::string& file) {
    try {
        SQLite::Database alone = openReadOnly(file);
        return identityOf(alone);
    } catch (const SQLite::Exception&) {
        return {};
    }
}

bool hasForeignLog(SQLite::Database& database, const std::string& file) {
    const std::string own = identityWithoutLog(file);
    if (own.empty()) return false;
    return !hasTable(database, "kitchen") || identityOf(database) != own;
}

}  // namespace

Result<void> checkContent(SQLite::Database& database, const std::string& path,
                          const KitchenPlace& place) {
    if (place.unfinished && hasForeignLog(database, place.file)) {
        // Closing the file would write the log into it.
        sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
        const std::string log = std::filesystem::path{place.file}.filename().string() + "-wal";
        return fail(errorIn(path, ErrorCode::KitchenNeighbour).with("found", log));
    }
    return checkTables(database, path);
}

}  // namespace nettare
