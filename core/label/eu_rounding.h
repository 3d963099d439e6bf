#pragma once

#include <optional>

#include "core/food/label_line.h"
#include "core/label/print_rule.h"

namespace nettare {

/// The rounding that the Commission guidance on tolerances of December 2012 recommends for an
/// amount per 100 g or mL, in the line's unit; no law. Nothing for vitamins and minerals, which go
/// by significant figures, and where labels of the EU and the UK have no such line.
[[nodiscard]] std::optional<PrintRule> euAmountRule(const LabelLine& line);

/// To how many significant figures the same guidance rounds a vitamin or mineral, 2 or 3; nothing
/// for other lines.
[[nodiscard]] std::optional<int> euSignificantFigures(const LabelLine& line);

}  // namespace nettare
