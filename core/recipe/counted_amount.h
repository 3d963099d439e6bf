#pragma once

#include "core/quantity/amount.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// The amount that counts by the rule: a range as it is, its least or its most; the text stays as
/// typed.
[[nodiscard]] Amount counted(const Amount& amount, RangeRule rule);

}  // namespace nettare
