#include <algorithm>

#include "core/support/text.h"
#include "db/import/sr28_parts.h"
#include "db/import/sr28_rows.h"

namespace nettare {

namespace {

enum FoodField : std::size_t {
    kFoodNumber,
    kFoodGroup,
    kLongName,
    kShortName,
    kCommonNames,
    kManufacturer,
    kSurvey,
    kRefuseNote,
    kRefusePercent,
    kScientificName,
    kNitrogenFactor,
    kProteinFactor,
    kFatFactor,
    kCarbohydrateFactor,
    kFoodFields
};

/// Common names stand between commas, but in those of meat cuts, which carry their number of the
/// meat identity standards ("URMIS #1098"), the commas are part of the name.
std::vector<std::string> otherNamesOf(std::string_view name, std::string_view common,
                                      std::string_view scientific) {
    std::vector<std::string_view> candidates{common};
    if (common.find('#') == std::string_view::npos) candidates = split(common, ',');
    candidates.push_back(scientific);
    std::vector<std::string> names;
    for (const std::string_view candidate : candidates) {
        const std::string other{trimmed(candidate)};
        const bool known = std::ranges::find(names, other) != names.end();
        if (!other.empty() && other != name && !known) names.push_back(other);
    }
    return names;
}

/// SR28 prints 0.00 where it gives no factor; no food has zero grams of protein per gram of
/// nitrogen.
std::optional<double> nitrogenFactor(Sr28Rows& rows) {
    const auto factor = rows.number(kNitrogenFactor);
    return factor == 0 ? std::nullopt : factor;
}

NewFood foodAt(Sr28Rows& rows, const Sr28Codes& codes) {
    NewFood food;
    food.number = rows.requiredText(kFoodNumber);
    food.name = rows.requiredText(kLongName);
    food.otherNames = otherNamesOf(food.name, rows.text(kCommonNames), rows.text(kScientificName));
    food.refusePercent = rows.number(kRefusePercent);
    if (food.refusePercent.value_or(0) > 100)
        rows.refuse(rows.raw(kRefusePercent), "a number from 0 to 100");
    food.refuseNote = rows.text(kRefuseNote);
    food.factors = {nitrogenFactor(rows), rows.number(kProteinFactor), rows.number(kFatFactor),
                    rows.number(kCarbohydrateFactor)};
    if (!rows.text(kManufacturer).empty()) food.place = ProcessingPlace::Branded;
    const auto group = codes.groups.find(rows.raw(kFoodGroup));
    if (group == codes.groups.end())
        rows.refuse(rows.raw(kFoodGroup), "a group of FD_GROUP");
    else
        food.group = group->second;
    return food;
}

}  // namespace

Result<void> readSr28Foods(Sr28Import& import) {
    auto rows = Sr28Rows::open(import.files, "FOOD_DES.txt", kFoodFields, import.run);
    if (!rows) return fail(rows.error());
    for (;;) {
        const auto more = rows->next();
        if (!more) return fail(more.error());
        if (!*more) break;
        const NewFood food = foodAt(*rows, import.codes);
        if (import.writer.find(food.number)) rows->refuse(ErrorCode::RowRepeated, food.number);
        if (!rows->refused() && import.writer.food(food)) import.codes.names.push_back(food.name);
    }
    import.writer.input("FOOD_DES.txt", rows->sha256());
    return {};
}

}  // namespace nettare
