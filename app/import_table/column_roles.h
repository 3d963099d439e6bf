#pragma once

#include <QString>

#include <string>
#include <vector>

#include "core/food/component.h"
#include "db/import/csv_mapping.h"

namespace nettare {

/// What a column of a CSV is for.
enum class ColumnUse { NotTaken, Number, Name, Group, OtherNames, Refuse, Value };

/// One column of the file with what it is taken for.
struct ColumnRole {
    std::string header;
    std::vector<std::string> firstValues;  ///< of the rows that the preview has
    ColumnUse use = ColumnUse::NotTaken;
    Component component = Component::ENERC_KCAL;  ///< of a Value
    std::string unit;                             ///< of a Value
};

/// The columns of a preview, header first, with the roles that a mapping gives them.
[[nodiscard]] std::vector<ColumnRole> columnRoles(
    const std::vector<std::vector<std::string>>& preview, const CsvMapping& mapping);

/// The mapping with the columns that the roles name; all else stays. Of two columns for one thing
/// the first counts.
[[nodiscard]] CsvMapping withRoles(CsvMapping mapping, const std::vector<ColumnRole>& roles);

/// The units that a column of a component may be in: g, mg, µg, or kcal, kJ.
[[nodiscard]] std::vector<std::string> unitsFor(Component component);

/// What is still needed before the mapping can be used, as a sentence; empty where nothing is.
[[nodiscard]] QString missingOf(const CsvMapping& mapping);

}  // namespace nettare
