#pragma once

#include <string>
#include <vector>

#include "core/support/result.h"
#include "db/import/csv_columns.h"

namespace nettare {

/// The texts of a food's row.
struct CsvFood {
    std::string number;
    std::string name;
    std::string group;  ///< empty where the table has none
    std::vector<std::string> otherNames;
};

/// Reads them from the row that the reader stands at. Fails, and the row is left out, with file and
/// line: what the reader found wrong, FieldsDiffer, FoodNumberMissing, FoodNameMissing,
/// FoodTextNotClean.
[[nodiscard]] Result<CsvFood> readCsvFood(const CsvReader& reader, const CsvColumns& columns,
                                          const CsvMapping& mapping);

/// The names between commas or semicolons, each once; those that cannot be shown are passed over.
[[nodiscard]] std::vector<std::string> namesIn(std::string_view text);

}  // namespace nettare
