#include <set>

#include "db/build_table/read_parts.h"

namespace nettare {

namespace {

/// The columns of components.txt: the number, then every component that tables publish.
std::string componentColumns() {
    std::string columns = "number";
    for (const ComponentFacts& facts : allComponents())
        if (facts.component != Component::SUGAD) columns += "|" + std::string{facts.tagname};
    return columns;
}

/// Foods without a line in components.txt would be foods of which nothing is known.
Result<void> checkEveryFood(const std::vector<TableFood>& foods, const std::set<std::string>& seen,
                            const std::string& file) {
    for (const TableFood& food : foods)
        if (!seen.contains(food.row.number)) {
            Error error = Error{ErrorCode::MissingKey}.with("key", food.row.number);
            error.file = file;
            return fail(error);
        }
    return {};
}

}  // namespace

Result<void> readComponents(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(folder, "components.txt", componentColumns());
    if (!table) return fail(table.error());
    std::set<std::string> seen;
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        TableFood* food = foodOfRow(row, foods);
        if (food != nullptr && !seen.insert(food->row.number).second)
            row.refuse(ErrorCode::DuplicateId);
        if (!row.good()) return fail(row.error());
        for (const ComponentFacts& facts : allComponents())
            if (facts.component != Component::SUGAD)
                food->profile.per100g[indexOf(facts.component)] = row.number();
        if (!row.good()) return fail(row.error());
    }
    return checkEveryFood(foods.all(), seen, table->file);
}

Result<void> readSpreads(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(folder, "spreads.txt", "number|tagname|n|standard_error");
    if (!table) return fail(table.error());
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        TableFood* food = foodOfRow(row, foods);
        const auto component = componentNamed(row.requiredText());
        if (!component) row.refuse(ErrorCode::ComponentUnknown);
        if (!row.good()) return fail(row.error());
        Spread& spread = food->profile.spread[indexOf(*component)];
        if (!food->profile[*component]) row.refuse(ErrorCode::UnknownReference);
        if (spread.standardError) row.refuse(ErrorCode::DuplicateId);
        spread.n = row.count();
        spread.standardError = row.number();
        if (!spread.standardError || spread.n == 0) row.refuse(ErrorCode::EmptyText);
        if (!row.good()) return fail(row.error());
    }
    return {};
}

Result<void> readMeasureRows(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(
        folder, "measures.txt", "number|amount|unit|qualifier|grams|n|standard_deviation_grams");
    if (!table) return fail(table.error());
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        TableFood* food = foodOfRow(row, foods);
        HouseholdMeasure measure;
        measure.amount = row.positiveNumber();
        measure.unit = row.requiredText();
        measure.qualifier = row.text();
        measure.grams = row.positiveNumber();
        measure.n = row.count();
        measure.standardDeviation = row.number();
        if (!row.good()) return fail(row.error());
        food->measures.push_back(std::move(measure));
    }
    return {};
}

}  // namespace nettare
