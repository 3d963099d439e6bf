#pragma once

#include <string_view>

#include "db/kitchen/kitchen.h"

namespace nettare {

/// The labelled food in use whose name or UUID is that, or whose name begins so where only one
/// does; letter case does not matter. Fails: LabelFoodUnknown, LabelFoodAmbiguous ("known"),
/// NotALabel where an own food of another source is called so; as reading a kitchen does.
[[nodiscard]] Result<OwnFoodRecord> labelledFoodNamed(const Kitchen& kitchen,
                                                      std::string_view name);

}  // namespace nettare
