#include <algorithm>

#include "db/build_table/read_parts.h"

namespace nettare {

Result<void> readNames(const std::string& folder, const std::string& file, FoodList& foods) {
    const auto table = readTextTable(folder, file, "number|name");
    if (!table) return fail(table.error());
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        TableFood* food = foodOfRow(row, foods);
        std::string name = row.requiredText();
        if (food != nullptr && std::ranges::find(food->otherNames, name) != food->otherNames.end())
            row.refuse(ErrorCode::DuplicateId);
        if (!row.good()) return fail(row.error());
        food->otherNames.push_back(std::move(name));
    }
    return {};
}

Result<std::vector<std::string>> readEveryday(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(folder, "everyday.txt", "number");
    if (!table) return fail(table.error());
    std::vector<std::string> numbers;
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        const TableFood* food = foodOfRow(row, foods);
        if (food != nullptr && std::ranges::find(numbers, food->row.number) != numbers.end())
            row.refuse(ErrorCode::DuplicateId);
        if (!row.good()) return fail(row.error());
        numbers.push_back(food->row.number);
    }
    return numbers;
}

}  // namespace nettare
