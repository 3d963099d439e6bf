#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/component.h"
#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

/// A column that holds a component.
struct MappedComponent {
    std::string column;  ///< header text
    Component component{};
    std::string unit;  ///< of the column: g, mg, µg, kcal, kJ; converted to the component's own
};

/// How a CSV of foods is read. It is saved as JSON and used again for the next release.
struct CsvMapping {
    std::string table;     ///< "ifct"
    std::string release;   ///< "2017"
    std::string citation;  ///< as its publisher asks to be cited
    char separator = ',';
    char decimalSign = '.';
    std::string numberColumn, nameColumn;
    std::string groupColumn;       ///< empty: one group for all
    std::string otherNamesColumn;  ///< names between commas or semicolons; empty: none
    std::string refuseColumn;      ///< percent of the weight as purchased; empty: none
    double gramsOfFood = 100;      ///< that the values are for
    std::vector<MappedComponent> components;
    std::vector<std::string> missingMarks{"", "-", "NA", "N/A", "nd"};  ///< texts of no data
    /// Where the publisher writes 0 for no data as well: a zero is then missing.
    bool zeroIsMissing = false;
};

/// As JSON with sorted keys.
[[nodiscard]] Json csvMappingJson(const CsvMapping& mapping);

/// Reads it back. Fails like readRecipe() does, with a pointer.
[[nodiscard]] Result<CsvMapping> readCsvMapping(const Json& json);

/// A guess from the first rows: separator, and columns whose header is a tagname or a usual name
/// with a unit it states. Columns it cannot tell are left out.
[[nodiscard]] Result<CsvMapping> guessCsvMapping(const std::string& path);

/// The first rows of a file as they are, header first, for a preview.
[[nodiscard]] Result<std::vector<std::vector<std::string>>> csvPreview(const std::string& path,
                                                                       char separator, int rows);

}  // namespace nettare
