#include "db/food_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>

#include "core/support/text.h"
#include "db/columns.h"

namespace nettare {

namespace {

AddedSugarKind addedSugarKind(std::string_view word) {
    if (word == "all") return AddedSugarKind::AllOfItsSugars;
    if (word == "stated") return AddedSugarKind::Stated;
    if (word == "between") return AddedSugarKind::BetweenNoneAndAll;
    return AddedSugarKind::None;
}

void readValues(SQLite::Database& database, std::int64_t rowOrder, Profile& profile) {
    SQLite::Statement values{database, R"sql(
        SELECT c.tagname, v.value_per_100g, v.standard_error_per_100g, v.data_points, a.relative
        FROM food_component v
        JOIN food f USING (row_order)
        JOIN component c USING (component_id)
        LEFT JOIN assumed_spread a
            ON a.group_id = f.group_id AND a.component_id = v.component_id
        WHERE v.row_order = ?)sql"};
    values.bind(1, rowOrder);
    while (values.executeStep()) {
        const auto component = componentNamed(textAt(values, 0));
        if (!component) continue;
        profile.per100g[indexOf(*component)] = numberAt(values, 1);
        Spread& spread = profile.spread[indexOf(*component)];
        spread.standardError = numberAt(values, 2);
        spread.n = countAt(values, 3);
        if (!spread.standardError) spread.assumedRelative = numberAt(values, 4);
    }
}

std::vector<HouseholdMeasure> readMeasures(SQLite::Database& database, std::int64_t rowOrder) {
    SQLite::Statement rows{database, R"sql(
        SELECT amount, unit, qualifier, grams, data_points, standard_deviation_grams
        FROM measure WHERE row_order = ? ORDER BY position)sql"};
    rows.bind(1, rowOrder);
    std::vector<HouseholdMeasure> measures;
    while (rows.executeStep())
        measures.push_back({.amount = rows.getColumn(0).getDouble(),
                            .unit = textAt(rows, 1),
                            .qualifier = textAt(rows, 2),
                            .grams = rows.getColumn(3).getDouble(),
                            .n = countAt(rows, 4),
                            .standardDeviation = numberAt(rows, 5)});
    return measures;
}

std::vector<std::string> readOtherNames(SQLite::Database& database, std::int64_t rowOrder) {
    SQLite::Statement rows{database,
                           "SELECT name FROM other_name WHERE row_order = ? ORDER BY position"};
    rows.bind(1, rowOrder);
    std::vector<std::string> names;
    while (rows.executeStep()) names.push_back(textAt(rows, 0));
    return names;
}

TableFood foodOf(SQLite::Statement& row, const TableIdentity& identity) {
    TableFood food;
    food.row = {identity.table, identity.release, textAt(row, 1)};
    food.name = textAt(row, 2);
    food.group = textAt(row, 3);
    food.refusePercent = numberAt(row, 4);
    food.refuseNote = textAt(row, 5);
    food.plant = row.getColumn(6).getInt() == 1;
    food.factors = {numberAt(row, 7), numberAt(row, 8), numberAt(row, 9), numberAt(row, 10)};
    food.addedSugars = {addedSugarKind(textAt(row, 11)), numberAt(row, 12).value_or(0),
                        textAt(row, 13)};
    return food;
}

FoodHit hitOf(SQLite::Statement& row, const TableIdentity& identity) {
    return {.row = {identity.table, identity.release, textAt(row, 0)},
            .name = textAt(row, 1),
            .group = textAt(row, 2),
            .energyKcalPer100g = numberAt(row, 3),
            .knownComponents = row.getColumn(4).getInt()};
}

}  // namespace

TableIdentity readIdentity(SQLite::Database& database) {
    SQLite::Statement row{database, R"sql(
        SELECT table_name, release, citation, piece_spread_relative, piece_spread_rows,
               volume_spread_relative, volume_spread_rows FROM identity)sql"};
    TableIdentity identity;
    if (!row.executeStep()) return identity;
    identity.table = textAt(row, 0);
    identity.release = textAt(row, 1);
    identity.citation = textAt(row, 2);
    identity.measureSpreads = {.pieceRelative = numberAt(row, 3),
                               .pieceRows = countAt(row, 4),
                               .volumeRelative = numberAt(row, 5),
                               .volumeRows = countAt(row, 6)};
    return identity;
}

std::size_t countFoods(SQLite::Database& database) {
    return static_cast<std::size_t>(database.execAndGet("SELECT count(*) FROM food").getInt64());
}

std::optional<TableFood> readFood(SQLite::Database& database, const TableIdentity& identity,
                                  std::string_view number) {
    SQLite::Statement row{database, R"sql(
        SELECT f.row_order, f.number, f.name, g.name, f.refuse_percent, f.refuse_note, f.plant,
               f.nitrogen_factor_g_per_g, f.protein_kcal_per_g, f.fat_kcal_per_g,
               f.carbohydrate_kcal_per_g, f.added_sugars, f.added_sugars_g_per_100g,
               f.added_sugars_reason
        FROM food f JOIN food_group g USING (group_id) WHERE f.number = ?)sql"};
    row.bind(1, std::string{number});
    if (!row.executeStep()) return std::nullopt;
    const std::int64_t rowOrder = row.getColumn(0).getInt64();
    TableFood food = foodOf(row, identity);
    readValues(database, rowOrder, food.profile);
    food.measures = readMeasures(database, rowOrder);
    food.otherNames = readOtherNames(database, rowOrder);
    return food;
}

std::vector<GroupDensity> readGroupDensities(SQLite::Database& database) {
    std::vector<GroupDensity> densities;
    if (!database.tableExists("group_density")) return densities;
    SQLite::Statement rows{database, R"sql(
        SELECT g.name, d.grams_per_ml, d.relative_spread, d.foods
        FROM group_density d JOIN food_group g USING (group_id) ORDER BY g.name)sql"};
    while (rows.executeStep())
        densities.push_back({.group = textAt(rows, 0),
                             .gramsPerMl = rows.getColumn(1).getDouble(),
                             .relativeSpread = rows.getColumn(2).getDouble(),
                             .foods = rows.getColumn(3).getInt()});
    return densities;
}

std::vector<Candidate> readCandidates(SQLite::Database& database, const TableIdentity& identity,
                                      const std::string& indexQuery, int most) {
    SQLite::Statement rows{database, R"sql(
        SELECT f.number, f.name, g.name,
               (SELECT v.value_per_100g FROM food_component v JOIN component c USING (component_id)
                WHERE v.row_order = f.row_order AND c.tagname = 'ENERC_KCAL'),
               (SELECT count(*) FROM food_component v WHERE v.row_order = f.row_order),
               f.row_order
        FROM food_words w JOIN food f ON f.row_order = w.rowid JOIN food_group g USING (group_id)
        WHERE food_words MATCH ? ORDER BY w.rowid LIMIT ?)sql"};
    rows.bind(1, indexQuery);
    rows.bind(2, most);
    std::vector<Candidate> found;
    while (rows.executeStep())
        found.push_back({.hit = hitOf(rows, identity),
                         .otherNames = readOtherNames(database, rows.getColumn(5).getInt64())});
    return found;
}

}  // namespace nettare
