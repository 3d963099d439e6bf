#pragma once

#include <string>

#include "core/label/check_label.h"

namespace nettare {

/// What a finding says, in the words and numbers of the label: "Total Carbohydrate 60 g and Protein
/// 18 g make 243 to 342 kcal; the label says 95 to 105. Was it Total Carbohydrate 6 g?" Alcohol,
/// organic acids and sugar alcohols that a label need not print are asked for where they could be
/// the reason.
[[nodiscard]] std::string findingSentence(const LabelFacts& label, const LabelFinding& finding);

/// What a printed amount stands for, short: "95–105", "< 0.5", "4.75–5.5".
[[nodiscard]] std::string intervalText(const DecimalInterval& interval);

}  // namespace nettare
