#include "db/import/csv_cell.h"

#include <algorithm>
#include <array>

#include "core/support/text.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

struct MostOfUnit {
    std::string_view unit;
    double per100g;
};

// 100 g and the scatter of analyses: tables print oils with 100.01 g of fat. Pure fat has 902 kcal
// (9.02 kcal/g, Merrill and Watt, USDA Handbook 74) or 3774 kJ.
constexpr std::array<MostOfUnit, 5> kMost{
    {{"g", 101}, {"mg", 101e3}, {"µg", 101e6}, {"kcal", 920}, {"kJ", 3850}}};

std::optional<double> mostOf(std::string_view unit) {
    for (const MostOfUnit& most : kMost)
        if (most.unit == unit) return most.per100g;
    return std::nullopt;
}

Error cellError(ErrorCode code, std::string_view cell, std::string_view column) {
    return Error{code}.with("found", cell).with("column", column);
}

Result<std::optional<double>> checkedCell(std::string_view cell, std::optional<double> value,
                                          std::optional<double> most, std::string_view unit,
                                          std::string_view column) {
    if (!value) return fail(cellError(ErrorCode::CellNotANumber, cell, column));
    if (*value < 0) return fail(cellError(ErrorCode::CellNegative, cell, column));
    if (most && *value > *most)
        return fail(cellError(ErrorCode::CellTooLarge, cell, column)
                        .with("most", numberText(*most))
                        .with("unit", unit));
    return value;
}

}  // namespace

bool isMissingMark(std::string_view cell, const CsvMapping& mapping) {
    if (cell.empty()) return true;
    const std::string written = lowerAscii(cell);
    return std::ranges::any_of(mapping.missingMarks, [&](const std::string& mark) {
        return mark.size() == written.size() && lowerAscii(mark) == written;
    });
}

Result<std::optional<double>> readCell(std::string_view cell, const ValueColumn& column,
                                       const CsvMapping& mapping) {
    const std::string_view text = trimmed(cell);
    if (isMissingMark(text, mapping)) return std::optional<double>{};
    auto value = readScaledNumber(text, mapping.decimalSign, column.powerOfTen);
    if (value && mapping.gramsOfFood != 100) value = *value * 100 / mapping.gramsOfFood;
    if (value && *value == 0 && mapping.zeroIsMissing) return std::optional<double>{};
    return checkedCell(text, value, mostOf(column.unit), column.unit, column.header);
}

Result<std::optional<double>> readRefuseCell(std::string_view cell, const CsvMapping& mapping) {
    const std::string_view text = trimmed(cell);
    if (isMissingMark(text, mapping)) return std::optional<double>{};
    return checkedCell(text, readScaledNumber(text, mapping.decimalSign), 100, "%",
                       mapping.refuseColumn);
}

}  // namespace nettare
