#pragma once

#include <string_view>

#include "core/food/label_line.h"
#include "core/quantity/interval.h"
#include "core/support/result.h"

namespace nettare {

/// printedInterval() of a label of the EU or the UK: by the Commission guidance of December 2012
/// where it prints such a text, else half of the last digit to either side. Vitamins and minerals:
/// half of the last printed digit.
[[nodiscard]] Result<DecimalInterval> euPrintedInterval(const LabelLine& line,
                                                        std::string_view printed);

}  // namespace nettare
