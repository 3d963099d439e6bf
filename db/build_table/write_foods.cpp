#include "db/build_table/write_foods.h"

#include <SQLiteCpp/Database.h>

#include "db/build_table/bind.h"

namespace nettare {

namespace {

std::string_view wordOf(AddedSugarKind kind) {
    switch (kind) {
        case AddedSugarKind::None:
            return "none";
        case AddedSugarKind::AllOfItsSugars:
            return "all";
        case AddedSugarKind::Stated:
            return "stated";
        case AddedSugarKind::BetweenNoneAndAll:
            return "between";
    }
    return {};
}

void writeFoodRow(SQLite::Database& database, const TableFood& food, int rowOrder, int group) {
    SQLite::Statement row{database,
                          "INSERT INTO food VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"};
    const bool stated = food.addedSugars.kind == AddedSugarKind::Stated;
    row.bind(1, rowOrder);
    bindText(row, 2, food.row.number);
    bindText(row, 3, food.name);
    row.bind(4, group);
    bindNumber(row, 5, food.refusePercent);
    bindNote(row, 6, food.refuseNote);
    row.bind(7, food.plant ? 1 : 0);
    bindNumber(row, 8, food.factors.nitrogen);
    bindNumber(row, 9, food.factors.protein);
    bindNumber(row, 10, food.factors.fat);
    bindNumber(row, 11, food.factors.carbohydrate);
    bindText(row, 12, wordOf(food.addedSugars.kind));
    bindNumber(row, 13, stated ? std::optional{food.addedSugars.statedPer100g} : std::nullopt);
    bindText(row, 14, food.addedSugars.reason);
    row.exec();
}

void writeValues(SQLite::Database& database, const Profile& profile, int rowOrder) {
    for (std::size_t i = 0; i < kComponentCount; ++i) {
        if (!profile.per100g[i]) continue;
        SQLite::Statement row{database, "INSERT INTO food_component VALUES (?, ?, ?, ?, ?)"};
        row.bind(1, rowOrder);
        row.bind(2, static_cast<int>(i));
        bindNumber(row, 3, profile.per100g[i]);
        bindNumber(row, 4, profile.spread[i].standardError);
        bindCount(row, 5, profile.spread[i].n);
        row.exec();
    }
}

void writeMeasures(SQLite::Database& database, const TableFood& food, int rowOrder) {
    int position = 0;
    for (const HouseholdMeasure& measure : food.measures) {
        SQLite::Statement row{database, "INSERT INTO measure VALUES (?, ?, ?, ?, ?, ?, ?, ?)"};
        row.bind(1, rowOrder);
        row.bind(2, position++);
        row.bind(3, measure.amount);
        bindText(row, 4, measure.unit);
        bindNote(row, 5, measure.qualifier);
        row.bind(6, measure.grams);
        bindCount(row, 7, measure.n);
        bindNumber(row, 8, measure.standardDeviation);
        row.exec();
    }
}

void writeNames(SQLite::Database& database, const TableFood& food, int rowOrder) {
    std::string words;
    int position = 0;
    for (const std::string& name : food.otherNames) {
        SQLite::Statement row{database, "INSERT INTO other_name VALUES (?, ?, ?)"};
        row.bind(1, rowOrder);
        row.bind(2, position++);
        bindText(row, 3, name);
        row.exec();
        words += name + "\n";
    }
    SQLite::Statement row{database,
                          "INSERT INTO food_words (rowid, name, other_names) VALUES (?, ?, ?)"};
    row.bind(1, rowOrder);
    bindText(row, 2, food.name);
    bindText(row, 3, words);
    row.exec();
}

}  // namespace

void writeFood(SQLite::Database& database, const TableFood& food, int rowOrder,
               const GroupNumbers& groups) {
    writeFoodRow(database, food, rowOrder, groups.at(food.group));
    writeValues(database, food.profile, rowOrder);
    writeMeasures(database, food, rowOrder);
    writeNames(database, food, rowOrder);
}

}  // namespace nettare
