#include <array>
#include <map>

#include "core/support/text.h"
#include "db/import/fdc_foods.h"
#include "db/import/fdc_measure.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

// FoodData Central download, field descriptions, from memory.
enum PortionColumn : std::size_t {
    kPortionFdcId,
    kPortionAmount,
    kPortionUnitId,
    kPortionDescription,
    kPortionModifier,
    kPortionGrams,
    kPortionDataPoints,
};
constexpr std::array<FdcColumn, 7> kPortionColumns{{{"fdc_id"},
                                                    {"amount", false},
                                                    {"measure_unit_id", false},
                                                    {"portion_description", false},
                                                    {"modifier", false},
                                                    {"gram_weight"},
                                                    {"data_points", false}}};
constexpr std::array<FdcColumn, 2> kUnitColumns{{{"id"}, {"name"}}};

using UnitNames = std::map<std::string, std::string, std::less<>>;

Result<UnitNames> readUnitNames(FdcImport& import) {
    UnitNames names;
    if (!import.files.has("measure_unit.csv")) return names;
    const auto read = eachFdcRow(import, "measure_unit.csv", kUnitColumns,
                                 [&](FdcFile& file) { names.emplace(file[0], oneLine(file[1])); });
    if (!read) return fail(read.error());
    return names;
}

void takePortion(FdcImport& import, FdcFile& file, const UnitNames& units) {
    const auto food = foodOfRow(import, file, kPortionFdcId);
    if (!food) return;
    const auto unit = units.find(file[kPortionUnitId]);
    const auto name = import.plainNames.find(*food);
    auto measure =
        fdcMeasure({file[kPortionAmount], unit == units.end() ? std::string_view{} : unit->second,
                    file[kPortionDescription], file[kPortionModifier]},
                   name == import.plainNames.end() ? std::string_view{} : name->second);
    // "Quantity not specified": what the survey takes where nobody says; no measure.
    if (!measure) return;
    const auto grams = readScaledNumber(trimmed(file[kPortionGrams]));
    measure->grams = grams.value_or(0);
    measure->n = static_cast<int>(fdcId(file[kPortionDataPoints]).value_or(0));
    if (!import.writer.measure(*food, *measure))
        file.reject(file.errorHere(ErrorCode::MeasureWeighsNothing).with("found", measure->unit));
}

}  // namespace

Result<void> readFdcPortions(FdcImport& import) {
    if (!import.files.has("food_portion.csv")) return {};
    const auto units = readUnitNames(import);
    if (!units) return fail(units.error());
    return eachFdcRow(import, "food_portion.csv", kPortionColumns,
                      [&](FdcFile& file) { takePortion(import, file, *units); });
}

}  // namespace nettare
