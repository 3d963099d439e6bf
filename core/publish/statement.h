#pragma once

#include <vector>

#include "core/publish/left_out.h"

namespace nettare {

/// The figures in a sentence, for any multiples of one piece, each rounded once from the one
/// unrounded value: "1 skewer has 58 kcal, 2 skewers have 117 kcal and 3 skewers have 175 kcal." A
/// second sentence names that value and its interval; a figure with missing parts says "at least"
/// and what share is known. `pieces` come in the order of the sentence; none give no multiples. Of
/// the lines that the recipe leaves out or counts in part, those in `uncounted` are named at the
/// end: they may hold some of it.
[[nodiscard]] std::string statementText(const Figure& perPiece, const Recipe& recipe,
                                        const std::vector<Count>& pieces,
                                        const std::vector<UncountedLine>& uncounted = {});

}  // namespace nettare
