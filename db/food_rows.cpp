#include "db/food_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cstdint>

#include "core/support/text.h"
#include "db/build_table/assumed_spread.h"
#include "db/columns.h"

namespace nettare {

namespace {

AddedSugarKind addedSugarKind(std::string_view word) {
    if (word == "all") return AddedSugarKind::AllOfItsSugars;
    if (word == "stated") return AddedSugarKind::Stated;
    if (word == "between") return AddedSugarKind::BetweenNoneAndAll;
    return AddedSugarKind::None;
}

void readValues(SQLite::Database& database, std::int64_t foodId, Profile& profile) {
    SQLite::Statement values{database, R"sql(
        SELECT v.component_id, v.value_per_100g, v.standard_error_per_100g, v.data_points,
               a.relative
        FROM food_component v
        JOIN food f USING (food_id)
        LEFT JOIN assumed_spread a
            ON a.group_id = f.group_id AND a.component_id = v.component_id
        WHERE v.food_id = ? AND v.component_id < ?)sql"};
    values.bind(1, foodId);
    values.bind(2, static_cast<int>(kComponentCount));
    while (values.executeStep()) {
        const auto component = static_cast<std::size_t>(values.getColumn(0).getInt());
        profile.per100g[component] = numberAt(values, 1);
        Spread& spread = profile.spread[component];
        spread.standardError = numberAt(values, 2);
        spread.n = countAt(values, 3);
        if (!spread.standardError) spread.assumedRelative = numberAt(values, 4);
    }
}

std::vector<HouseholdMeasure> readMeasures(SQLite::Database& database, std::int64_t foodId) {
    SQLite::Statement rows{database, R"sql(
        SELECT amount, unit, qualifier, grams, data_points, standard_deviation_grams
        FROM measure WHERE food_id = ? ORDER BY position)sql"};
    rows.bind(1, foodId);
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

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    if (text.empty()) return lines;
    for (const std::string_view line : split(text, '\n')) lines.emplace_back(line);
    return lines;
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
    food.otherNames = linesOf(textAt(row, 14));
    return food;
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

std::vector<std::string> readNumbers(SQLite::Database& database) {
    SQLite::Statement rows{database, "SELECT number FROM food ORDER BY row_order"};
    std::vector<std::string> numbers;
    while (rows.executeStep()) numbers.push_back(textAt(rows, 0));
    return numbers;
}

PerComponent<std::optional<double>> readUsualSpread(SQLite::Database& database) {
    PerComponent<std::vector<double>> groups{};
    SQLite::Statement rows{database, "SELECT component_id, relative FROM assumed_spread"};
    while (rows.executeStep())
        groups.at(static_cast<std::size_t>(rows.getColumn(0).getInt()))
            .push_back(rows.getColumn(1).getDouble());
    PerComponent<std::optional<double>> usual{};
    std::ranges::transform(groups, usual.begin(), medianOf);
    return usual;
}

std::optional<TableFood> readFood(SQLite::Database& database, const TableIdentity& identity,
                                  std::string_view number) {
    SQLite::Statement row{database, R"sql(
        SELECT f.food_id, f.number, f.name, g.name, f.refuse_percent, f.refuse_note, f.plant,
               f.nitrogen_factor_g_per_g, f.protein_kcal_per_g, f.fat_kcal_per_g,
               f.carbohydrate_kcal_per_g, f.added_sugars, f.added_sugars_g_per_100g,
               f.added_sugars_reason, f.other_names
        FROM food f JOIN food_group g USING (group_id) WHERE f.number = ?)sql"};
    row.bind(1, std::string{number});
    if (!row.executeStep()) return std::nullopt;
    const std::int64_t foodId = row.getColumn(0).getInt64();
    TableFood food = foodOf(row, identity);
    readValues(database, foodId, food.profile);
    food.measures = readMeasures(database, foodId);
    return food;
}

std::vector<FoodValue> readFoodValues(SQLite::Database& database, std::string_view number) {
    SQLite::Statement rows{database, R"sql(
        SELECT c.tagname, c.number, c.name, c.unit, v.value_per_100g, v.standard_error_per_100g,
               v.data_points, d.description, s.description
        FROM food f
        JOIN food_component v USING (food_id)
        JOIN component c USING (component_id)
        LEFT JOIN derivation d USING (derivation_id)
        LEFT JOIN source s USING (source_id)
        WHERE f.number = ? ORDER BY v.component_id)sql"};
    rows.bind(1, std::string{number});
    std::vector<FoodValue> values;
    while (rows.executeStep())
        values.push_back({.tagname = textAt(rows, 0),
                          .number = textAt(rows, 1),
                          .name = textAt(rows, 2),
                          .unit = textAt(rows, 3),
                          .per100g = rows.getColumn(4).getDouble(),
                          .standardError = numberAt(rows, 5),
                          .n = countAt(rows, 6),
                          .derivation = textAt(rows, 7),
                          .source = textAt(rows, 8)});
    return values;
}

std::vector<GroupDensity> readGroupDensities(SQLite::Database& database) {
    std::vector<GroupDensity> densities;
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

std::optional<FoodHit> readHit(SQLite::Database& database, const TableIdentity& identity,
                               std::string_view number) {
    SQLite::Statement row{database, R"sql(
        SELECT f.number, f.name, g.name, f.energy_kcal_per_100g, f.known_components, f.place
        FROM food f JOIN food_group g USING (group_id) WHERE f.number = ?)sql"};
    row.bind(1, std::string{number});
    if (!row.executeStep()) return std::nullopt;
    return FoodHit{.row = {identity.table, identity.release, textAt(row, 0)},
                   .name = textAt(row, 1),
                   .group = textAt(row, 2),
                   .energyKcalPer100g = numberAt(row, 3),
                   .knownComponents = row.getColumn(4).getInt(),
                   .place = static_cast<ProcessingPlace>(row.getColumn(5).getInt())};
}

}  // namespace nettare
