#include <algorithm>
#include <array>

#include "core/support/text.h"
#include "db/import/fdc_foods.h"
#include "db/import/import_parts.h"

namespace nettare {

namespace {

constexpr std::string_view kFdcTable = "usda-fdc";

// FoodData Central download, field descriptions, from memory.
constexpr std::array<FdcColumn, 1> kDateColumns{{{"publication_date"}}};

constexpr std::array<std::string_view, 10> kFilesRead{
    "food.csv",         "branded_food.csv",        "food_category.csv",
    "nutrient.csv",     "wweia_food_category.csv", "food_nutrient_derivation.csv",
    "measure_unit.csv", "food_nutrient.csv",       "food_portion.csv",
    "food.csv"};

/// Of all that is read; food.csv and branded_food.csv are read twice.
std::size_t bytesToRead(const ImportFiles& files) {
    std::size_t bytes = files.size("branded_food.csv");
    for (const std::string_view name : kFilesRead) bytes += files.size(name);
    return bytes;
}

/// "2019-04-01"
bool isIsoDate(std::string_view text) {
    if (text.size() != 10) return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool hyphen = i == 4 || i == 7;
        if (hyphen ? text[i] != '-' : text[i] < '0' || text[i] > '9') return false;
    }
    return true;
}

/// As the publisher asks to be cited (FoodData Central, from memory).
std::string fdcCitation(const std::string& release) {
    return "U.S. Department of Agriculture, Agricultural Research Service. FoodData Central, " +
           release + ".";
}

Result<void> readFdc(FdcImport& import, const VolumeFoods& volumeFoods) {
    const auto categories = readFdcCategories(import);
    if (!categories) return fail(categories.error());
    if (auto read = readFdcFoods(import, *categories, volumeFoods); !read) return read;
    if (auto read = readFdcBrands(import); !read) return read;
    if (auto read = readFdcValues(import); !read) return read;
    return readFdcPortions(import);
}

}  // namespace

Result<std::string> newestFdcDate(const ImportFiles& files, ImportRun& run) {
    auto file = FdcFile::open(files, "food.csv", kDateColumns, run);
    if (!file) return fail(file.error());
    std::string newest;
    while (true) {
        const auto there = file->next();
        if (!there) return fail(there.error());
        if (!*there) break;
        const std::string_view date = trimmed((*file)[0]);
        if (isIsoDate(date) && date > newest) newest = date;
    }
    if (newest.empty()) return fail(file->errorHere(ErrorCode::FdcNoDate));
    return newest;
}

Result<ImportReport> importFdc(const ImportRequest& request, const TellImport& tell) {
    const auto files = ImportFiles::open(request.path);
    if (!files) return fail(files.error());
    ImportRun run{request, tell, bytesToRead(*files)};
    const auto release = newestFdcDate(*files, run);
    if (!release) return fail(release.error());
    const auto volumeFoods = readVolumeFoods(*files, run);
    if (!volumeFoods) return fail(volumeFoods.error());
    // Rows that cannot be read are reported when they are read for what they hold.
    run.report.rejected = 0;
    run.report.rejectedRows.clear();
    const TableTarget target{std::string{kFdcTable}, *release, fdcCitation(*release),
                             request.folder, request.dryRun};
    auto writer = TableWriter::begin(target);
    if (!writer) return fail(writer.error());
    FdcImport import{*files, run, *writer};
    if (const auto read = readFdc(import, *volumeFoods); !read) return fail(read.error());
    return run.finish(*writer, target);
}

}  // namespace nettare
