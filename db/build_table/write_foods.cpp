#include "db/build_table/write_foods.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <algorithm>

#include "core/recipe/words.h"
#include "db/build_table/bind.h"
#include "db/build_table/processing_place.h"

namespace nettare {

namespace {

std::string joinedLines(const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, "\n"));
}

int knownComponents(const Profile& profile) {
    return static_cast<int>(std::ranges::count_if(
        profile.per100g, [](const std::optional<double>& value) { return value.has_value(); }));
}

void writeFoodRow(SQLite::Database& database, const TableFood& food, int rowOrder, int group) {
    SQLite::Statement row{database,
                          "INSERT INTO food VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
                          "?, ?, ?, ?)"};
    const bool stated = food.addedSugars.kind == AddedSugarKind::Stated;
    int column = 0;
    row.bind(++column, rowOrder);
    row.bind(++column, rowOrder);
    bindText(row, ++column, food.row.number);
    bindText(row, ++column, food.name);
    bindText(row, ++column, joinedLines(food.otherNames));
    row.bind(++column, group);
    row.bind(++column, static_cast<int>(processingPlace(food.name, food.group)));
    bindNumber(row, ++column, food.profile[Component::ENERC_KCAL]);
    row.bind(++column, knownComponents(food.profile));
    bindNumber(row, ++column, food.refusePercent);
    bindNote(row, ++column, food.refuseNote);
    row.bind(++column, food.plant ? 1 : 0);
    bindNumber(row, ++column, food.factors.nitrogen);
    bindNumber(row, ++column, food.factors.protein);
    bindNumber(row, ++column, food.factors.fat);
    bindNumber(row, ++column, food.factors.carbohydrate);
    bindText(row, ++column, wordFor(food.addedSugars.kind, kAddedSugarWords));
    bindNumber(row, ++column,
               stated ? std::optional{food.addedSugars.statedPer100g} : std::nullopt);
    bindText(row, ++column, food.addedSugars.reason);
    row.exec();
}

void writeValues(SQLite::Database& database, const Profile& profile, int rowOrder) {
    for (std::size_t i = 0; i < kComponentCount; ++i) {
        if (!profile.per100g[i]) continue;
        SQLite::Statement row{database,
                              "INSERT INTO food_component VALUES (?, ?, ?, ?, ?, NULL, NULL)"};
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

void writeWords(SQLite::Database& database, const TableFood& food, int rowOrder) {
    SQLite::Statement row{database,
                          "INSERT INTO food_words (rowid, name, other_names) VALUES (?, ?, ?)"};
    row.bind(1, rowOrder);
    bindText(row, 2, food.name);
    bindText(row, 3, joinedLines(food.otherNames));
    row.exec();
}

}  // namespace

void writeFood(SQLite::Database& database, const TableFood& food, int rowOrder,
               const GroupNumbers& groups) {
    writeFoodRow(database, food, rowOrder, groups.at(food.group));
    writeValues(database, food.profile, rowOrder);
    writeMeasures(database, food, rowOrder);
    writeWords(database, food, rowOrder);
}

}  // namespace nettare
