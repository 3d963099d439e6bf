#include "db/import/staged_foods.h"

#include <fmt/format.h>

#include "db/build_table/bind.h"

namespace nettare {

namespace {

constexpr auto kStagedFood = R"sql(
    CREATE TEMP TABLE staged_food (
        food_id INTEGER PRIMARY KEY,
        number TEXT, name TEXT, other_names TEXT, group_id INTEGER,
        refuse_percent REAL, refuse_note TEXT,
        nitrogen REAL, protein REAL, fat REAL, carbohydrate REAL,
        place INTEGER))sql";

/// The table comes first, so that statements on it can be made.
SQLite::Database& withTable(SQLite::Database& database) {
    database.exec(kStagedFood);
    return database;
}

void runOnce(SQLite::Statement& statement) {
    statement.exec();
    statement.reset();
}

void bindFactors(SQLite::Statement& row, int from, const ConversionFactors& factors) {
    bindNumber(row, from, factors.nitrogen);
    bindNumber(row, from + 1, factors.protein);
    bindNumber(row, from + 2, factors.fat);
    bindNumber(row, from + 3, factors.carbohydrate);
}

}  // namespace

StagedFoods::StagedFoods(SQLite::Database& database)
    : insert_{withTable(database),
              "INSERT INTO staged_food VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"},
      group_{database, "UPDATE staged_food SET group_id = ?2 WHERE food_id = ?1"},
      factors_{database,
               "UPDATE staged_food SET nitrogen = ?2, protein = ?3, fat = ?4, carbohydrate = ?5 "
               "WHERE food_id = ?1"},
      place_{database, "UPDATE staged_food SET place = ?2 WHERE food_id = ?1"},
      names_{database,
             "UPDATE staged_food SET other_names = other_names || "
             "CASE other_names WHEN '' THEN '' ELSE char(10) END || ?2 WHERE food_id = ?1"} {}

void StagedFoods::add(std::uint32_t id, const NewFood& food) {
    insert_.bind(1, id);
    bindText(insert_, 2, food.number);
    bindText(insert_, 3, food.name);
    bindText(insert_, 4, fmt::format("{}", fmt::join(food.otherNames, "\n")));
    insert_.bind(5, food.group);
    bindNumber(insert_, 6, food.refusePercent);
    bindNote(insert_, 7, food.refuseNote);
    bindFactors(insert_, 8, food.factors);
    if (food.place)
        insert_.bind(12, static_cast<int>(*food.place));
    else
        insert_.bind(12);
    runOnce(insert_);
}

void StagedFoods::setGroup(std::uint32_t id, int group) {
    group_.bind(1, id);
    group_.bind(2, group);
    runOnce(group_);
}

void StagedFoods::setFactors(std::uint32_t id, const ConversionFactors& factors) {
    factors_.bind(1, id);
    bindFactors(factors_, 2, factors);
    runOnce(factors_);
}

void StagedFoods::setPlace(std::uint32_t id, ProcessingPlace place) {
    place_.bind(1, id);
    place_.bind(2, static_cast<int>(place));
    runOnce(place_);
}

void StagedFoods::addOtherNames(std::uint32_t id, const std::vector<std::string>& names) {
    if (names.empty()) return;
    names_.bind(1, id);
    bindText(names_, 2, fmt::format("{}", fmt::join(names, "\n")));
    runOnce(names_);
}

}  // namespace nettare
