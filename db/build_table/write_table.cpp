#include "db/build_table/write_table.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include "core/food/group_density.h"
#include "db/build_table/assumed_spread.h"
#include "db/build_table/bind.h"
#include "db/build_table/row_order.h"
#include "db/build_table/write_foods.h"
#include "db/search/list_words.h"
#include "db/sql_step.h"
#include "db/table_format.h"

namespace nettare {

namespace {

void createTables(SQLite::Database& database) {
    // Nobody reads the file before it is whole, so neither journal nor early syncing is needed.
    database.exec("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA foreign_keys = ON");
    database.exec("PRAGMA application_id = " + std::to_string(kTableApplicationId));
    database.exec("PRAGMA user_version = " + std::to_string(kTableFormat));
    for (const SqlStep& step : tableSchema()) database.exec(std::string{step.text});
}

void writeIdentity(SQLite::Database& database, const TableText& text) {
    const MeasureSpreads spreads = measureSpreads(text.foods);
    SQLite::Statement row{database, "INSERT INTO identity VALUES (1, ?, ?, ?, ?, ?, ?, ?)"};
    bindText(row, 1, text.table);
    bindText(row, 2, text.release);
    bindText(row, 3, text.citation);
    bindNumber(row, 4, spreads.pieceRelative);
    row.bind(5, spreads.pieceRows);
    bindNumber(row, 6, spreads.volumeRelative);
    row.bind(7, spreads.volumeRows);
    row.exec();
    for (const TableInput& input : text.inputs) {
        SQLite::Statement line{database, "INSERT INTO input VALUES (?, ?)"};
        bindText(line, 1, input.name);
        bindText(line, 2, input.sha256);
        line.exec();
    }
}

void writeComponents(SQLite::Database& database) {
    for (const ComponentFacts& facts : allComponents()) {
        SQLite::Statement row{database, "INSERT INTO component VALUES (?, ?, NULL, ?, ?)"};
        row.bind(1, static_cast<int>(indexOf(facts.component)));
        bindText(row, 2, facts.tagname);
        bindText(row, 3, facts.name);
        bindText(row, 4, facts.unit);
        row.exec();
    }
}

/// Numbers the groups by their names, and gives each its assumed spreads.
GroupNumbers writeGroups(SQLite::Database& database, const AssumedSpreads& assumed) {
    GroupNumbers numbers;
    for (const auto& [name, medians] : assumed.byGroup) {
        const int number = static_cast<int>(numbers.size()) + 1;
        numbers[name] = number;
        SQLite::Statement row{database, "INSERT INTO food_group VALUES (?, ?)"};
        row.bind(1, number);
        bindText(row, 2, name);
        row.exec();
        for (std::size_t i = 0; i < kComponentCount; ++i) {
            const auto relative = medians[i] ? medians[i] : assumed.overAllGroups[i];
            if (!relative) continue;
            SQLite::Statement line{database, "INSERT INTO assumed_spread VALUES (?, ?, ?, ?)"};
            line.bind(1, number);
            line.bind(2, static_cast<int>(i));
            bindNumber(line, 3, relative);
            line.bind(4, medians[i] ? 0 : 1);
            line.exec();
        }
    }
    return numbers;
}

void writeDensities(SQLite::Database& database, const TableText& text, const GroupNumbers& groups) {
    for (const GroupDensity& density : groupDensities(text.foods)) {
        SQLite::Statement row{database, "INSERT INTO group_density VALUES (?, ?, ?, ?)"};
        row.bind(1, groups.at(density.group));
        row.bind(2, density.gramsPerMl);
        row.bind(3, density.relativeSpread);
        row.bind(4, density.foods);
        row.exec();
    }
}

void writeAll(SQLite::Database& database, const TableText& text) {
    createTables(database);
    SQLite::Transaction transaction{database};
    writeIdentity(database, text);
    writeComponents(database);
    const GroupNumbers groups = writeGroups(database, assumedSpreads(text.foods));
    writeDensities(database, text, groups);
    int rowOrder = 0;
    for (const TableFood* food : inRowOrder(text)) writeFood(database, *food, ++rowOrder, groups);
    database.exec("INSERT INTO food_words (food_words) VALUES ('optimize')");
    listWords(database);
    transaction.commit();
}

}  // namespace

Result<void> writeTable(const TableText& text, const std::string& path) {
    try {
        SQLite::Database database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        writeAll(database, text);
        return {};
    } catch (const SQLite::Exception& cause) {
        Error error = Error{ErrorCode::FileNotWritable}.with("reason", cause.what());
        error.file = path;
        return fail(error);
    }
}

}  // namespace nettare
