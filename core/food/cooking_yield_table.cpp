#include "core/food/cooking_yield_table.h"

#include <algorithm>

#include "core/food/published_rows.h"

namespace nettare {

/// resources/yields/cooking_yields.txt; the build makes it.
std::string_view cookingYieldsText();

namespace {

constexpr std::string_view kYieldColumns =
    "sheet_row|food_group|food_number|description|method|yield_percent|n|"
    "standard_deviation_percent|least_percent|most_percent|moisture_change_percent|"
    "fat_change_percent|release_year";

CookingYield yieldOf(PublishedFields& fields) {
    CookingYield row;
    row.sheetRow = fields.whole(2, 9999);
    row.foodGroup = fields.digits(4);
    row.foodNumber = fields.digitsOrGap(5);
    row.description = fields.text();
    row.method = fields.text();
    row.yieldPercent = fields.number(1, 200);
    row.n = fields.wholeOrGap(1, 9999);
    row.standardDeviationPercent = fields.numberOrGap(0, 100);
    row.leastPercent = fields.numberOrGap(1, 200);
    row.mostPercent = fields.numberOrGap(1, 200);
    row.moistureChangePercent = fields.numberOrGap(-100, 100);
    row.fatChangePercent = fields.numberOrGap(-100, 100);
    row.releaseYear = fields.whole(1900, 2100);
    return row;
}

}  // namespace

Result<CookingYieldTable> CookingYieldTable::read(std::string_view text) {
    const auto rows = publishedRows(text, kYieldColumns);
    if (!rows) return fail(rows.error());
    CookingYieldTable table;
    for (const PublishedRow& published : *rows) {
        PublishedFields fields{published};
        CookingYield row = yieldOf(fields);
        if (!table.yields_.empty() && row.sheetRow <= table.yields_.back().sheetRow)
            fields.refuse("rising sheet rows");
        if (fields.fault()) return fail(*fields.fault());
        table.yields_.push_back(std::move(row));
    }
    return table;
}

const CookingYield* CookingYieldTable::atSheetRow(int sheetRow) const {
    const auto found = std::ranges::lower_bound(yields_, sheetRow, {}, &CookingYield::sheetRow);
    return found != yields_.end() && found->sheetRow == sheetRow ? &*found : nullptr;
}

const CookingYieldTable& cookingYieldTable() {
    static const CookingYieldTable kTable =
        CookingYieldTable::read(cookingYieldsText()).value_or(CookingYieldTable{});
    return kTable;
}

}  // namespace nettare
