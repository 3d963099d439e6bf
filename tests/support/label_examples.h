#pragma once

#include <string>

#include "core/label/check_label.h"

namespace nettare {

/// An invented oat biscuit, 1 piece of 30 g: 4 x 2 + 4 x 20 + 9 x 6 = 142 kcal.
[[nodiscard]] LabelFacts usBiscuit();

/// An invented oat biscuit per 100 g by Annex XIV: 9 x 16 + 4 x 66 + 2 x 3.5 + 4 x 7.5 = 445 kcal,
/// 37 x 16 + 17 x 66 + 8 x 3.5 + 17 x 7.5 = 1869.5 kJ.
[[nodiscard]] LabelFacts euBiscuit();

/// The label with another printed amount; a line it does not have is added.
[[nodiscard]] LabelFacts withLine(LabelFacts label, const LabelLine& line,
                                  const std::string& printed);

/// The label without the line.
[[nodiscard]] LabelFacts withoutLine(LabelFacts label, const LabelLine& line);

/// The label with another size of its serving, and its household measure: "1 cup".
[[nodiscard]] LabelFacts withServing(LabelFacts label, const char* size, const char* amount,
                                     const char* unit);

}  // namespace nettare
