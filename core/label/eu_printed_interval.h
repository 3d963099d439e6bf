#pragma once

#include <optional>

#include "core/food/label_line.h"
#include "core/label/print_rule.h"
#include "core/quantity/interval.h"

namespace nettare {

/// The true amounts that a label of the EU or the UK prints so: by the Commission guidance of
/// December 2012 where it prints such a text, else half of the last digit to either side, since the
/// guidance is no law. A vitamin or mineral: its significant figures or its last printed digit,
/// whichever leaves more room.
[[nodiscard]] DecimalInterval euAmountsPrintedAs(const LabelLine& line,
                                                 const PrintedAmount& printed);

}  // namespace nettare
