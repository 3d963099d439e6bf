#include "many_foods.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/core.h>

#include <filesystem>

#include "db/search/list_words.h"
#include "db/sql_step.h"
#include "db/table_format.h"

namespace nettare {

std::span<const SqlStep> tableSchema();

void writeManyFoods(const std::string& table, int foods, const std::string& path) {
    const std::string partial = path + ".partial";
    std::filesystem::remove(partial);
    {
        SQLite::Database database{partial, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF");
        for (const SqlStep& step : tableSchema()) database.exec(std::string{step.text});
        database.exec(fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}",
                                  kTableApplicationId, kTableFormat));
        database.exec(fmt::format("ATTACH '{}' AS few", table));
        SQLite::Transaction transaction{database};
        database.exec("INSERT INTO identity SELECT * FROM few.identity");
        database.exec("INSERT INTO food_group SELECT * FROM few.food_group");
        const int size = database.execAndGet("SELECT count(*) FROM few.food").getInt();
        const int copies = (foods + size - 1) / size;
        database.exec(fmt::format(
            "INSERT INTO food WITH RECURSIVE copy(k) AS (SELECT 1 UNION ALL SELECT k + 1 FROM copy "
            "WHERE k < {0}) SELECT (f.row_order - 1) * {0} + k, (f.row_order - 1) * {0} + k, "
            "f.number || '-' || k, f.name || ', ' || k, f.other_names, f.group_id, f.place, "
            "f.energy_kcal_per_100g, f.known_components, NULL, NULL, f.plant, NULL, NULL, NULL, "
            "NULL, f.added_sugars, f.added_sugars_g_per_100g, f.added_sugars_reason "
            "FROM few.food f CROSS JOIN copy ORDER BY 1 LIMIT {1}",
            copies, foods));
        database.exec(
            "INSERT INTO food_words (rowid, name, other_names) SELECT row_order, name, other_names "
            "FROM food ORDER BY row_order");
        database.exec("INSERT INTO food_words (food_words) VALUES ('optimize')");
        listWords(database);
        transaction.commit();
    }
    std::filesystem::rename(partial, path);
}

}  // namespace nettare
