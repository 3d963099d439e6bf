#pragma once

#include "app/compare/method_words.h"

#include <vector>

#include "core/publish/compared_method.h"

namespace nettare {

/// The steps of both methods as the screen shows them: "2." for a step of both, "+ 2." for one that
/// was added, U+2212 and its old number for one that was removed.
[[nodiscard]] std::vector<ComparedStep> stepWords(const std::vector<StepDifference>& method);

}  // namespace nettare
