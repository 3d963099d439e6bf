#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"
#include "db/import/csv_mapping.h"
#include "db/import/csv_reader.h"

namespace nettare {

/// A column of values, and how they become those of the table file.
struct ValueColumn {
    std::size_t index = 0;
    std::string header;
    std::optional<Component> component;  ///< nothing for one of the mapping's others
    std::size_t other = 0;               ///< its place among them
    std::string unit;                    ///< of the component, or the column's own for others
    int powerOfTen = 0;                  ///< from the column's unit to that one
};

/// Where the columns of a mapping stand in a file.
struct CsvColumns {
    std::size_t count = 0;
    std::size_t number = 0, name = 0;
    std::optional<std::size_t> group, otherNames, refuse;
    std::vector<ValueColumn> values;
};

/// Finds them in the header row that the reader stands at. Fails: CsvColumnMissing,
/// CsvColumnTwice, CsvUnitMissing, CsvUnitNotFitting.
[[nodiscard]] Result<CsvColumns> findColumns(const CsvMapping& mapping, const CsvReader& header);

}  // namespace nettare
