#pragma once

#include <QString>

#include "core/food/own_food.h"
#include "db/food_search.h"
#include "db/kitchen/own_food_record.h"

namespace nettare {

/// Where a row is from, short: "SR28", "own food", "in-foods 2017".
[[nodiscard]] QString sourceName(const TableRow& row);

/// What a list says below the name of a hit: "SR28 · vegetable", "own food · in 2 recipes", and
/// "label" where it was read from a package.
[[nodiscard]] QString hitNote(const FoodHit& hit, int recipes, bool labelled);

/// Below the name of the food that is shown: "public table SR28 · edible portion 95 % · used in 3
/// recipes". Nothing is said of recipes as long as `recipes` is negative.
[[nodiscard]] QString foodFacts(const TableFood& food, int recipes);

/// "own food, version 2 of 3 · miller's analysis, 2026-05-16", and what was changed in a copy.
[[nodiscard]] QString originText(const OwnFoodRecord& record);

/// "8 842 foods · 8 789 from SR28, 41 labels, 12 own": what the pantry holds. `tables` are the
/// names of the tables with their foods.
struct TableCount {
    QString name;
    std::size_t foods = 0;
};
[[nodiscard]] QString pantryCounts(const std::vector<TableCount>& tables, std::size_t labels,
                                   std::size_t own);

/// A whole number with its thousands apart from 1 000 on, as headings write it.
[[nodiscard]] QString groupedCount(std::size_t count);

/// "one slip forgiven: courgette, also zucchini"; empty for none.
[[nodiscard]] QString slipText(const std::vector<ForgivenSlip>& slips);

/// Where a recipe uses a food: "draft", "revision 2", "draft with version 1, revision 2".
[[nodiscard]] QString useText(const FoodUse& use);

}  // namespace nettare
