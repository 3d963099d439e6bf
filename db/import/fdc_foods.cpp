#include "db/import/fdc_foods.h"

#include <algorithm>
#include <array>

#include "core/support/text.h"
#include "db/import/one_line.h"

namespace nettare {

namespace {

constexpr std::uint32_t kLeftOut = 0xFFFFFFFF;
constexpr std::string_view kBranded = "branded_food";
constexpr std::string_view kSurveyFood = "survey_fndds_food";
constexpr std::string_view kNoCategory = "food";
constexpr std::size_t kLongestDescription = 1000;

// Single samples and lots behind the published foods: no food that a cook means. (Data types:
// FoodData Central download, field descriptions, from memory.)
constexpr std::array<std::string_view, 5> kTypesLeftOut{"sub_sample_food", "market_acquisition",
                                                        "agricultural_acquisition", "sample_food",
                                                        "experimental_food"};

// FoodData Central download, field descriptions, from memory.
constexpr std::array<FdcColumn, 4> kFdcFoodColumns{
    {{"fdc_id"}, {"data_type"}, {"description"}, {"food_category_id", false}}};
constexpr std::array<FdcColumn, 2> kCategoryColumns{{{"id"}, {"description"}}};
constexpr std::array<FdcColumn, 2> kSurveyCategoryColumns{
    {{"wweia_food_category"}, {"wweia_food_category_description"}}};

int groupOf(FdcImport& import, const FdcCategories& categories, const FdcFile& file) {
    const auto& names = file[1] == kSurveyFood ? categories.ofSurvey : categories.ofFoods;
    const auto found = names.find(file[3]);
    return import.writer.group(found == names.end() ? kNoCategory : found->second);
}

/// The description on one line; nothing, and reported, where it cannot be shown.
std::optional<std::string> nameOf(FdcFile& file) {
    std::string name = oneLine(file[2]);
    if (name.empty()) {
        file.reject(file.errorHere(ErrorCode::FoodNameMissing).with("column", "description"));
        return std::nullopt;
    }
    if (!isPlainLine(name) || codePoints(name) > kLongestDescription) {
        file.reject(file.errorHere(ErrorCode::FoodTextNotClean)
                        .with("found", name)
                        .with("column", "description")
                        .with("most", std::to_string(kLongestDescription)));
        return std::nullopt;
    }
    return name;
}

/// Why a food is left out on purpose; empty where it is not.
std::string_view reasonToLeaveOut(const FdcFile& file, std::uint32_t id,
                                  const VolumeFoods& volumeFoods) {
    if (std::ranges::find(kTypesLeftOut, file[1]) != kTypesLeftOut.end()) return file[1];
    if (std::ranges::binary_search(volumeFoods, id)) return kFdcPer100Ml;
    return {};
}

void takeFood(FdcImport& import, FdcFile& file, const FdcCategories& categories,
              const VolumeFoods& volumeFoods) {
    const auto id = fdcId(file[0]);
    if (!id) {
        file.reject(file.errorHere(ErrorCode::FoodNumberMissing).with("column", "fdc_id"));
        return;
    }
    if (const std::string_view why = reasonToLeaveOut(file, *id, volumeFoods); !why.empty()) {
        ++import.run.report.leftOut[std::string{why}];
        return import.foods.leaveOut(*id);
    }
    auto name = nameOf(file);
    if (!name) return import.foods.leaveOut(*id);
    NewFood food;
    food.number = file[0];
    food.name = std::move(*name);
    food.group = groupOf(import, categories, file);
    const bool branded = file[1] == kBranded;
    if (branded) food.place = ProcessingPlace::Branded;
    const auto taken = import.writer.food(food);
    if (!taken)
        return file.reject(file.errorHere(ErrorCode::FoodNumberTwice).with("found", file[0]));
    import.foods.take(*id, *taken);
    if (!branded) import.plainNames.emplace(*taken, food.name.substr(0, food.name.find(',')));
}

}  // namespace

void FdcFoods::take(std::uint32_t fdcId, std::uint32_t food) {
    entries_.push_back({fdcId, food});
}

void FdcFoods::leaveOut(std::uint32_t fdcId) {
    entries_.push_back({fdcId, kLeftOut});
}

void FdcFoods::sort() {
    std::ranges::stable_sort(entries_, {}, &Entry::fdcId);
}

FdcFoods::Found FdcFoods::find(std::uint32_t fdcId) {
    const auto holds = [&](std::size_t at) {
        return at < entries_.size() && entries_[at].fdcId == fdcId;
    };
    if (!holds(last_) && !holds(++last_)) {
        const auto found = std::ranges::lower_bound(entries_, fdcId, {}, &Entry::fdcId);
        last_ = static_cast<std::size_t>(found - entries_.begin());
        if (!holds(last_)) return {};
    }
    const std::uint32_t food = entries_[last_].food;
    return {true, food == kLeftOut ? std::nullopt : std::optional{food}};
}

std::optional<std::uint32_t> foodOfRow(FdcImport& import, FdcFile& file, std::size_t fdcIdColumn) {
    const auto id = fdcId(file[fdcIdColumn]);
    const FdcFoods::Found found = id ? import.foods.find(*id) : FdcFoods::Found{};
    if (!found.listed)
        file.reject(file.errorHere(ErrorCode::RowWithoutFood).with("found", file[fdcIdColumn]));
    return found.food;
}

Result<FdcCategories> readFdcCategories(FdcImport& import) {
    FdcCategories categories;
    const auto read = [&](std::string_view name, const std::array<FdcColumn, 2>& columns,
                          auto& into) -> Result<void> {
        if (!import.files.has(name)) return {};
        return eachFdcRow(import, name, columns, [&](FdcFile& file) {
            const std::string group = oneLine(file[1]);
            if (!group.empty() && isPlainLine(group)) into.emplace(file[0], group);
        });
    };
    if (auto done = read("food_category.csv", kCategoryColumns, categories.ofFoods); !done)
        return fail(done.error());
    if (auto done = read("wweia_food_category.csv", kSurveyCategoryColumns, categories.ofSurvey);
        !done)
        return fail(done.error());
    return categories;
}

Result<void> readFdcFoods(FdcImport& import, const FdcCategories& categories,
                          const VolumeFoods& volumeFoods) {
    auto read = eachFdcRow(import, "food.csv", kFdcFoodColumns,
                           [&](FdcFile& file) { takeFood(import, file, categories, volumeFoods); });
    import.foods.sort();
    return read;
}

}  // namespace nettare
