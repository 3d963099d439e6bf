#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "db/import/fdc_file.h"
#include "db/import/table_writer.h"

namespace nettare {

/// Which foods of a download are taken, by their fdc_id. Holds eight bytes a food.
class FdcFoods {
public:
    /// A food that is taken, under the id the writer gave.
    void take(std::uint32_t fdcId, std::uint32_t food);
    /// A food that is there but left out on purpose: what other files say of it is passed over.
    void leaveOut(std::uint32_t fdcId);
    /// Once all are told.
    void sort();

    struct Found {
        bool listed = false;                ///< food.csv has it
        std::optional<std::uint32_t> food;  ///< where it is taken
    };
    /// Quickest for the id asked last and the one behind it.
    [[nodiscard]] Found find(std::uint32_t fdcId);

private:
    struct Entry {
        std::uint32_t fdcId, food;
    };
    std::vector<Entry> entries_;
    std::size_t last_ = 0;
};

/// Why branded foods served in ml are left out: their values are for 100 ml, and what a ml of them
/// weighs is not published. They are counted under this in ImportReport::leftOut.
inline constexpr std::string_view kFdcPer100Ml = "branded_food per 100 ml";

/// Foods of branded_food.csv whose values are for 100 ml, sorted.
using VolumeFoods = std::vector<std::uint32_t>;

/// Names of food categories, by data type and id.
struct FdcCategories {
    std::map<std::string, std::string, std::less<>> ofFoods;   ///< food_category.csv
    std::map<std::string, std::string, std::less<>> ofSurvey;  ///< wweia_food_category.csv
};

/// What every step of the import works with.
struct FdcImport {
    const ImportFiles& files;
    ImportRun& run;
    TableWriter& writer;
    FdcFoods foods{};
    /// What the names of foods that are not branded begin with, up to their comma: "Onions".
    std::unordered_map<std::uint32_t, std::string> plainNames{};
};

/// The newest publication_date of food.csv, "2019-04-01". Fails: as FdcFile, NotPublished where
/// there is none.
[[nodiscard]] Result<std::string> newestFdcDate(const ImportFiles& files, ImportRun& run);
/// Reads branded_food.csv for the foods that are served in ml; none where it is absent.
[[nodiscard]] Result<VolumeFoods> readVolumeFoods(const ImportFiles& files, ImportRun& run);
[[nodiscard]] Result<FdcCategories> readFdcCategories(FdcImport& import);
/// Reads food.csv.
[[nodiscard]] Result<void> readFdcFoods(FdcImport& import, const FdcCategories& categories,
                                        const VolumeFoods& volumeFoods);
/// Reads branded_food.csv, where it is: owner and brand, category, serving.
[[nodiscard]] Result<void> readFdcBrands(FdcImport& import);
/// Reads nutrient.csv, food_nutrient_derivation.csv and food_nutrient.csv.
[[nodiscard]] Result<void> readFdcValues(FdcImport& import);
/// Reads measure_unit.csv and food_portion.csv, where they are.
[[nodiscard]] Result<void> readFdcPortions(FdcImport& import);

/// Opens a file, calls `row` for each of its rows, and notes the file as an input.
template <class Row>
[[nodiscard]] Result<void> eachFdcRow(FdcImport& import, std::string_view name,
                                      std::span<const FdcColumn> columns, Row&& row) {
    auto file = FdcFile::open(import.files, name, columns, import.run);
    if (!file) return fail(file.error());
    while (true) {
        const auto there = file->next();
        if (!there) return fail(there.error());
        if (!*there) break;
        row(*file);
    }
    import.writer.input(name, file->sha256());
    return {};
}

/// The taken food that a row speaks of; reports a row of a food that food.csv does not list.
[[nodiscard]] std::optional<std::uint32_t> foodOfRow(FdcImport& import, FdcFile& file,
                                                     std::size_t fdcIdColumn);

}  // namespace nettare
