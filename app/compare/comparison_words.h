#pragma once

#include "app/compare/card_words.h"
#include "app/compare/compared_row.h"
#include "app/compare/method_words.h"
#include "app/session/evaluation.h"

#include <vector>

namespace nettare {

/// A comparison of two states as the screen says it.
struct ComparisonWords {
    std::vector<ComparedRow> rows;
    std::vector<CardWords> cards;
    std::vector<ComparedStep> steps;
};

/// Compares two states, the earlier one left. Needs no window and may run in any thread. Fails as
/// compared() does.
[[nodiscard]] Result<ComparisonWords> comparisonWords(const Evaluation& left,
                                                      const Evaluation& right,
                                                      const StateNames& states);

}  // namespace nettare
