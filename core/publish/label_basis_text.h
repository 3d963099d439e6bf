#pragma once

#include <string>

#include "core/food/label_facts.h"

namespace nettare {

/// What the amounts of a label are of: "1 tbsp (14 g)", "240 mL", "100 g".
[[nodiscard]] std::string labelBasisText(const LabelFacts& label);

/// A serving as printed: "1 tbsp = 14 g", "330 mL"; empty where there is none.
[[nodiscard]] std::string labelServingText(const LabelFacts& label);

}  // namespace nettare
