#pragma once

#include <optional>

#include "core/food/label_facts.h"
#include "core/food/table_food.h"
#include "core/support/error.h"

namespace nettare {

/// Why no recipe could use the label as it stands: an amount that cannot be read, or a line that
/// labels of these rules do not have; nothing where it can. Amounts that no rounding prints are a
/// finding of checkLabel() instead. LabelAmountUnreadable, ComponentUnknown, at
/// "/declares/2/printed" and "/declares/2/component".
[[nodiscard]] std::optional<Error> labelRefusal(const LabelFacts& label);

/// Why these added sugars, stated in g per 100 g, cannot be those of the label: more than 100, than
/// its sugars, or where it prints none than its carbohydrate, however it was rounded. A label that
/// prints added sugars goes by those. OutOfRange, AddedSugarsAboveSugars ("found", "most"), at
/// "/added_sugars/per_100g".
[[nodiscard]] std::optional<Error> addedSugarsRefusal(const LabelFacts& label,
                                                      const AddedSugars& added);

}  // namespace nettare
