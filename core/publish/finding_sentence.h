#pragma once

#include <string>

#include "core/nutrition/line_findings.h"

namespace nettare {

/// What a finding on a line says, with its numbers, and what to do about it: "the table says 1404
/// g, 7.3 % more than the series, more than their uncertainty explains: weigh more, or say why". No
/// full stop. `grams` is what the finding was made from.
[[nodiscard]] std::string findingSentence(const Dossier& dossier, std::size_t recipe,
                                          std::size_t line, const LineGrams& grams,
                                          const LineFinding& finding);

}  // namespace nettare
