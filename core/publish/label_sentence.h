#pragma once

#include <string>

#include "core/label/check_label.h"

namespace nettare {

/// What a finding says, in the numbers of the label: "60 g carbohydrate and 18 g protein make 308
/// to 320 kcal; the label says 95 to 105. Was it 6 g carbohydrate?" Alcohol, organic acids and
/// sugar alcohols that a label need not print are named where they could be the reason.
[[nodiscard]] std::string findingSentence(const LabelFacts& label, const LabelFinding& finding);

/// What a printed amount stands for, short: "95–105", "< 0.5", "4.75–5.5".
[[nodiscard]] std::string intervalText(const DecimalInterval& interval);

}  // namespace nettare
