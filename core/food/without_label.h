#pragma once

#include "core/food/table_food.h"

namespace nettare {

/// A labelled food as one of values that can be typed over: what its label comes to per 100 g, with
/// the relative spread that the rounding of amount, serving and density and the declaration leave,
/// as assumed. A printed 0 stays 0 without a spread, since nothing can be relative to it. A food
/// without a label stays as it is.
[[nodiscard]] TableFood withoutLabel(const TableFood& food);

}  // namespace nettare
