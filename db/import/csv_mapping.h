#pragma once

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
    /// Of the column: kg, g, mg, µg, ng, kcal or kJ; converted to the component's own. Empty where
    /// the header states none: an import asks for it.
    std::string unit;
};

/// A column of what the program has no component for. It is kept in the table file, for the cook
/// to read, under its INFOODS tagname and in its own unit.
struct MappedOther {
    std::string column;   ///< header text
    std::string tagname;  ///< "FIBSOL"
    std::string unit;
};

/// How a CSV of foods is read. It is saved as JSON and used again for the next release.
struct CsvMapping {
    std::string table;     ///< an identifier: "ifct"
    std::string release;   ///< "2017"
    std::string citation;  ///< as its publisher asks to be cited
    char separator = ',';  ///< or ';' or a tab
    char decimalSign = '.';
    std::string numberColumn, nameColumn;
    std::string groupColumn;       ///< empty: one group for all
    std::string otherNamesColumn;  ///< names between commas or semicolons; empty: none
    std::string refuseColumn;      ///< percent of the weight as purchased; empty: none
    double gramsOfFood = 100;      ///< that the values are for; at most six digits and six decimals
    std::vector<MappedComponent> components;
    std::vector<MappedOther> others;
    std::vector<std::string> missingMarks{"", "-", "NA", "N/A", "nd"};  ///< texts of no data
    /// Where the publisher writes 0 for no data as well: a zero is then missing.
    bool zeroIsMissing = false;
};

/// The value of "format" in a saved mapping.
inline constexpr std::string_view kCsvMappingFormat = "nettare columns";

/// As JSON with sorted keys.
[[nodiscard]] Json csvMappingJson(const CsvMapping& mapping);

/// Reads it back. Fails like readRecipe() does, with a pointer; NotAMapping, NewerFormat,
/// ComponentUnknown, DuplicateId (a component twice).
[[nodiscard]] Result<CsvMapping> readCsvMapping(const Json& json);

/// A guess from the first rows: separator, decimal sign, and columns whose header is a tagname or a
/// usual name; a unit only where the header states it. Columns it cannot tell are left out, as
/// "carbohydrate", which may hold fibre or not. The table is named by the file; release and
/// citation stay empty where the name has no year. Fails: FileNotReadable, CsvNoHeader, and what a
/// header row can have wrong.
[[nodiscard]] Result<CsvMapping> guessCsvMapping(const std::string& path);

/// The first rows of a file as they are, header first, for a preview: `rows` of foods at most. A
/// row that an import would leave out as unreadable is left out here. Fails as guessCsvMapping().
[[nodiscard]] Result<std::vector<std::vector<std::string>>> csvPreview(const std::string& path,
                                                                       char separator, int rows);

}  // namespace nettare
