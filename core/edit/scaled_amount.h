#pragma once

#include <string>

#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// How an amount is written once it is multiplied.
enum class AmountForm {
    Decimal,  ///< "333.32": weights, and what was written so
    Kitchen   ///< "1 1/2" where it is one that cooks measure, else a decimal
};

/// The amount times a factor above 0, with up to three significant digits more than its text had
/// and six decimals at most; both ends of a range. `direction` says to which side it is rounded.
[[nodiscard]] std::string scaledAmount(const Amount& amount, double factor, AmountForm form,
                                       Direction direction = Direction::Nearest);

}  // namespace nettare
