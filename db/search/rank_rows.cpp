#include "db/search/rank_rows.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstddef>
#include <string_view>

namespace nettare {

namespace {

/// The text of a column, valid until the next step.
std::string_view viewAt(SQLite::Statement& row, int column) {
    const SQLite::Column value = row.getColumn(column);
    const char* text = value.getText();
    return {text, static_cast<std::size_t>(value.getBytes())};
}

}  // namespace

std::vector<FoundRow> rankRows(SQLite::Database& database, const std::vector<AskedWord>& asked) {
    SQLite::Statement rows{database, R"sql(
        SELECT f.row_order, f.place, f.number, f.name, f.other_names
        FROM food_words w JOIN food f ON f.row_order = w.rowid
        WHERE food_words MATCH ? ORDER BY w.rowid LIMIT ?)sql"};
    rows.bind(1, askedQuery(asked));
    rows.bind(2, kMostCandidates);
    Matcher matcher{asked};
    std::vector<FoundRow> ranked;
    while (rows.executeStep())
        ranked.push_back({.match = matcher.of(viewAt(rows, 3), viewAt(rows, 4)),
                          .place = static_cast<ProcessingPlace>(rows.getColumn(1).getInt()),
                          .rowOrder = rows.getColumn(0).getInt64(),
                          .number = std::string{viewAt(rows, 2)}});
    return ranked;
}

}  // namespace nettare
