#include "db/build_table/read_parts.h"

namespace nettare {

bool FoodList::add(TableFood food) {
    if (!indexByNumber_.emplace(food.row.number, foods_.size()).second) return false;
    foods_.push_back(std::move(food));
    return true;
}

TableFood* FoodList::find(const std::string& number) {
    const auto found = indexByNumber_.find(number);
    return found == indexByNumber_.end() ? nullptr : &foods_[found->second];
}

TableFood* foodOfRow(RowReader& row, FoodList& foods) {
    TableFood* food = foods.find(row.requiredText());
    if (food == nullptr) row.refuse(ErrorCode::FoodNotFound);
    return food;
}

namespace {

/// SR28 prints 0.00 where it gives no factor: so for oils, but also for foods with protein (18338,
/// phyllo dough). No food has zero grams of protein per gram of nitrogen.
std::optional<double> readNitrogenFactor(RowReader& row) {
    const std::optional<double> factor = row.number();
    return factor == 0 ? std::nullopt : factor;
}

}  // namespace

Result<void> readFoods(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(folder, "foods.txt",
                                     "number|name|group|refuse_percent|refuse_note|nitrogen_factor|"
                                     "protein_kcal_per_g|fat_kcal_per_g|carbohydrate_kcal_per_g");
    if (!table) return fail(table.error());
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        TableFood food;
        food.row.number = row.requiredText();
        if (foods.find(food.row.number) != nullptr) row.refuse(ErrorCode::DuplicateId);
        food.name = row.requiredText();
        food.group = row.requiredText();
        food.refusePercent = row.number();
        if (food.refusePercent.value_or(0) > 100) row.refuse(ErrorCode::OutOfRange);
        food.refuseNote = row.text();
        food.factors.nitrogen = readNitrogenFactor(row);
        food.factors.protein = row.number();
        food.factors.fat = row.number();
        food.factors.carbohydrate = row.number();
        if (!row.good()) return fail(row.error());
        foods.add(std::move(food));
    }
    return {};
}

}  // namespace nettare
