#pragma once

#include <string>
#include <vector>

#include "core/edit/edit.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// An amount that was tried: the line, by its id, times a factor; 0 takes the line away.
struct TriedAmount {
    std::string line;
    double factor = 1;
    Direction rounding = Direction::Nearest;  ///< Floor for what must not be more
};

/// Takes tried amounts over as one edit, which is undone at once. What is weighed or assumed for a
/// line stays with its old amount, so that its grams scale; the amount that is said once more
/// scales too. Fails: UnknownReference; NotAnAmount for a line whose amount is none, such as "to
/// taste"; LastLine.
[[nodiscard]] Result<Edit> takeOverAmounts(const Json& document,
                                           const std::vector<TriedAmount>& amounts);

}  // namespace nettare
