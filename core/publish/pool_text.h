#pragma once

#include <string>

#include "core/recipe/dossier.h"

namespace nettare {

/// With what the spread of a document's series is pooled: " pooled with that of prawn meat, 2025",
/// " pooled with the usual one"; of one reading " taken from prawn meat, 2025", since it has none
/// of its own. Empty where with nothing. It follows the spread or the name of the series.
[[nodiscard]] std::string poolText(const SeriesData& series);

/// "fennel, trimmed, its spread pooled with that of fennel, 2025"; its name where with nothing.
[[nodiscard]] std::string ratioName(const SeriesData& series);

}  // namespace nettare
