#pragma once

#include <string_view>

#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"
#include "core/support/result.h"

namespace nettare {

/// Reads what a scale showed, as a cook types it: one mark, comma or point, is the decimal mark;
/// a minus may stand before it. The digits stay as typed: 271.10 keeps two decimals.
/// Fails: EmptyText, NotADecimal, AmountAmbiguous ("1,500" where the comma groups: both readings
/// are named), AmountTooLong.
[[nodiscard]] Result<Decimal> readShown(std::string_view text, GroupMark group);

/// The mark that groups thousands in the user's own notation.
[[nodiscard]] GroupMark groupMarkHere();

}  // namespace nettare
