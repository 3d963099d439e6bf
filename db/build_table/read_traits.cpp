#include <map>

#include "core/quantity/decimal.h"
#include "db/build_table/read_parts.h"

namespace nettare {

namespace {

struct Trait {
    AddedSugars addedSugars;
    bool plant = false;
};

constexpr std::string_view kGroupPrefix = "group ";

AddedSugars readAddedSugars(RowReader& row) {
    const std::string word = row.requiredText();
    AddedSugars added;
    if (word == "none") {
        added.kind = AddedSugarKind::None;
    } else if (word == "all") {
        added.kind = AddedSugarKind::AllOfItsSugars;
    } else if (word == "between") {
        added.kind = AddedSugarKind::BetweenNoneAndAll;
    } else if (const auto stated = Decimal::read(word)) {
        added.kind = AddedSugarKind::Stated;
        added.statedPer100g = stated->value();
        if (*stated < Decimal{} || *stated > Decimal{100, 0}) row.refuse(ErrorCode::OutOfRange);
    } else {
        row.refuse(ErrorCode::NotOneOf);
    }
    return added;
}

Trait readTrait(RowReader& row) {
    Trait trait;
    trait.addedSugars = readAddedSugars(row);
    const std::string plant = row.requiredText();
    if (plant != "yes" && plant != "no") row.refuse(ErrorCode::NotOneOf);
    trait.plant = plant == "yes";
    trait.addedSugars.reason = row.requiredText();
    return trait;
}

/// Gives every food its own line's trait, or that of its group.
Result<void> applyTraits(const std::map<std::string, Trait>& traits, const std::string& file,
                         std::vector<TableFood>& foods) {
    for (TableFood& food : foods) {
        const std::string group = std::string{kGroupPrefix} + food.group;
        auto found = traits.find(food.row.number);
        if (found == traits.end()) found = traits.find(group);
        if (found == traits.end()) {
            Error error = Error{ErrorCode::MissingKey}.with("key", group);
            error.file = file;
            return fail(error);
        }
        food.addedSugars = found->second.addedSugars;
        food.plant = found->second.plant;
    }
    return {};
}

}  // namespace

Result<void> readTraits(const std::string& folder, FoodList& foods) {
    const auto table = readTextTable(folder, "traits.txt", "key|added|plant|reason");
    if (!table) return fail(table.error());
    std::map<std::string, Trait> traits;
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        const std::string key = row.requiredText();
        if (!key.starts_with(kGroupPrefix) && foods.find(key) == nullptr)
            row.refuse(ErrorCode::FoodNotFound);
        if (traits.contains(key)) row.refuse(ErrorCode::DuplicateId);
        traits[key] = readTrait(row);
        if (!row.good()) return fail(row.error());
    }
    return applyTraits(traits, table->file, foods.all());
}

}  // namespace nettare
