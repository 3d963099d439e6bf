#pragma once

#include <optional>
#include <string_view>

#include "core/support/result.h"
#include "db/import/csv_columns.h"
#include "db/import/csv_mapping.h"

namespace nettare {

/// True for a text that the mapping calls no data, whatever its letters' case.
[[nodiscard]] bool isMissingMark(std::string_view cell, const CsvMapping& mapping);

/// The value of a cell per 100 g, in the unit of its column's component. Nothing where it is
/// missing. "tr", "trace" and "<0.1" are no numbers: a trace is neither zero nor known. Fails,
/// without file and line: CellNotANumber, CellNegative, and CellTooLarge for what 100 g cannot
/// hold, which is a unit mistaken more often than a slip.
[[nodiscard]] Result<std::optional<double>> readCell(std::string_view cell,
                                                     const ValueColumn& column,
                                                     const CsvMapping& mapping);

/// Refuse in percent, 0 to 100; nothing where it is missing. Fails the same way.
[[nodiscard]] Result<std::optional<double>> readRefuseCell(std::string_view cell,
                                                           const CsvMapping& mapping);

}  // namespace nettare
