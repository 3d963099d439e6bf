#include "core/food/retention_table.h"

#include <fmt/core.h>

#include <algorithm>
#include <cstddef>

#include "core/food/published_rows.h"

namespace nettare {

using enum Component;

/// resources/retention/factors.txt; the build makes it.
std::string_view retentionFactorsText();

namespace {

std::string retentionColumns() {
    std::string columns = "code|food_group|description";
    for (const RetainedNutrient& nutrient : retainedNutrients())
        columns += fmt::format("|{}", nutrient.number);
    return columns;
}

RetentionFactors factorsOf(PublishedFields& fields) {
    RetentionFactors factors;
    factors.code = fields.digits(4);
    factors.foodGroup = fields.digits(4);
    factors.description = fields.text();
    for (std::optional<int>& percent : factors.percentKept) percent = fields.wholeOrGap(0, 100);
    return factors;
}

std::optional<int> percentWhere(const RetentionFactors& factors, const auto& isMeant) {
    const auto found = std::ranges::find_if(retainedNutrients(), isMeant);
    if (found == retainedNutrients().end()) return std::nullopt;
    return factors.percentKept[static_cast<std::size_t>(found - retainedNutrients().begin())];
}

}  // namespace

const std::array<RetainedNutrient, kRetainedNutrientCount>& retainedNutrients() {
    static constexpr std::array<RetainedNutrient, kRetainedNutrientCount> kNutrients{{
        {221, "Alcohol, ethyl", ALC},
        {301, "Calcium, Ca", CA},
        {303, "Iron, Fe", FE},
        {304, "Magnesium, Mg", MG},
        {305, "Phosphorus, P", P},
        {306, "Potassium, K", K},
        {307, "Sodium, Na", NA},
        {309, "Zinc, Zn", ZN},
        {312, "Copper, Cu", CU},
        // Neither is vitamin A as retinol activity equivalents: carotenes count otherwise there.
        {318, "Vitamin A, IU", {}},
        {321, "Carotene, beta", {}},
        {322, "Carotene, alpha", {}},
        {334, "Cryptoxanthin, beta", {}},
        {337, "Lycopene", {}},
        {338, "Lutein + zeaxanthin", {}},
        {392, "Vitamin A, RE", {}},
        {401, "Vitamin C, total ascorbic acid", VITC},
        {404, "Thiamin", THIA},
        {405, "Riboflavin", RIBF},
        {406, "Niacin", NIA},
        {415, "Vitamin B-6", VITB6A},
        {417, "Folate, total", FOL},
        {418, "Vitamin B-12", VITB12},
        {421, "Choline, total", CHOLN},
        // The two parts of folate as dietary folate equivalents, which have no factor themselves.
        {431, "Folic acid", {}},
        {432, "Folate, food", {}},
    }};
    return kNutrients;
}

bool hasRetentionFactors(Component component) {
    return std::ranges::any_of(retainedNutrients(), [component](const RetainedNutrient& nutrient) {
        return nutrient.component == component;
    });
}

std::optional<int> RetentionFactors::percentOf(Component component) const {
    return percentWhere(*this, [component](const RetainedNutrient& nutrient) {
        return nutrient.component == component;
    });
}

std::optional<int> RetentionFactors::percentOfNutrient(int number) const {
    return percentWhere(
        *this, [number](const RetainedNutrient& nutrient) { return nutrient.number == number; });
}

Result<RetentionTable> RetentionTable::read(std::string_view text) {
    const auto rows = publishedRows(text, retentionColumns());
    if (!rows) return fail(rows.error());
    RetentionTable table;
    for (const PublishedRow& row : *rows) {
        PublishedFields fields{row};
        RetentionFactors factors = factorsOf(fields);
        if (!table.factors_.empty() && factors.code <= table.factors_.back().code)
            fields.refuse("rising codes");
        if (fields.fault()) return fail(*fields.fault());
        table.factors_.push_back(std::move(factors));
    }
    return table;
}

const RetentionFactors* RetentionTable::find(std::string_view code) const {
    const auto found = std::ranges::lower_bound(factors_, code, {}, &RetentionFactors::code);
    return found != factors_.end() && found->code == code ? &*found : nullptr;
}

const RetentionTable& retentionTable() {
    static const RetentionTable kTable =
        RetentionTable::read(retentionFactorsText()).value_or(RetentionTable{});
    return kTable;
}

}  // namespace nettare
