#pragma once

#include <QString>

#include "core/food/table_food.h"
#include "core/support/error.h"

namespace nettare {

/// What a cook calls a kind of added sugars: "none", "all of its sugars".
[[nodiscard]] QString addedSugarsName(AddedSugarKind kind);

/// What is wrong in a form of an own food, with the name of its field: "Protein: “1,2” is no
/// decimal number; …".
[[nodiscard]] QString entrySentence(const Error& error);

}  // namespace nettare
