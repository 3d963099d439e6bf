#include <algorithm>
#include <array>

#include "core/support/text.h"
#include "db/import/fdc_foods.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestBrandText = 200;

// FoodData Central download, field descriptions, from memory. A serving is in g or ml, newer
// downloads write GRM and MLT; amounts in food_nutrient.csv are then for 100 g or 100 ml.
enum BrandColumn : std::size_t {
    kBrandFdcId,
    kBrandOwner,
    kBrandName,
    kBrandCategory,
    kBrandServing,
    kBrandServingUnit,
    kBrandHousehold,
};
constexpr std::array<FdcColumn, 7> kBrandColumns{{{"fdc_id"},
                                                  {"brand_owner", false},
                                                  {"brand_name", false},
                                                  {"branded_food_category", false},
                                                  {"serving_size", false},
                                                  {"serving_size_unit", false},
                                                  {"household_serving_fulltext", false}}};
constexpr std::array<FdcColumn, 2> kVolumeColumns{{{"fdc_id"}, {"serving_size_unit", false}}};

bool isUnitOf(std::string_view unit, std::string_view a, std::string_view b) {
    const std::string lower = lowerAscii(trimmed(unit));
    return lower == a || lower == b;
}

std::string brandText(std::string_view field) {
    return shortened(oneLine(field), kLongestBrandText);
}

void takeBrandNames(FdcImport& import, const FdcFile& file, std::uint32_t food) {
    std::vector<std::string> names;
    for (const BrandColumn column : {kBrandOwner, kBrandName}) {
        std::string name = brandText(file[column]);
        if (!name.empty() && std::ranges::find(names, name) == names.end())
            names.push_back(std::move(name));
    }
    if (!names.empty()) import.writer.addOtherNames(food, names);
}

/// A serving by weight is a household measure: "1 serving (2 Tbsp) = 32 g".
void takeServing(FdcImport& import, const FdcFile& file, std::uint32_t food) {
    if (!isUnitOf(file[kBrandServingUnit], "g", "grm")) return;
    const auto grams = readScaledNumber(trimmed(file[kBrandServing]));
    HouseholdMeasure measure;
    measure.unit = "serving";
    measure.qualifier = brandText(file[kBrandHousehold]);
    measure.grams = grams.value_or(0);
    // A label without a serving is no fault of the row.
    static_cast<void>(import.writer.measure(food, measure));
}

}  // namespace

Result<VolumeFoods> readVolumeFoods(const ImportFiles& files, ImportRun& run) {
    VolumeFoods found;
    if (!files.has("branded_food.csv")) return found;
    auto file = FdcFile::open(files, "branded_food.csv", kVolumeColumns, run);
    if (!file) return fail(file.error());
    while (true) {
        const auto there = file->next();
        if (!there) return fail(there.error());
        if (!*there) break;
        const auto id = fdcId((*file)[0]);
        if (id && isUnitOf((*file)[1], "ml", "mlt")) found.push_back(*id);
    }
    std::ranges::sort(found);
    return found;
}

Result<void> readFdcBrands(FdcImport& import) {
    if (!import.files.has("branded_food.csv")) return {};
    return eachFdcRow(import, "branded_food.csv", kBrandColumns, [&](FdcFile& file) {
        const auto food = foodOfRow(import, file, kBrandFdcId);
        if (!food) return;
        takeBrandNames(import, file, *food);
        if (const std::string group = brandText(file[kBrandCategory]); !group.empty())
            import.writer.setGroup(*food, import.writer.group(group));
        takeServing(import, file, *food);
    });
}

}  // namespace nettare
