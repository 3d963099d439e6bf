#pragma once

#include <optional>
#include <string_view>

#include "core/food/table_food.h"

namespace nettare {

/// In what state a food is weighed, or a table row describes it. Values per 100 g differ by state:
/// rice gains twice its weight of water, a tin loses its liquid.
enum class FoodState {
    Raw,
    Cooked,
    Dry,       ///< dried or not yet soaked
    Drained,   ///< without the liquid it was packed or cooked in
    WithBone,  ///< with what is not eaten: bone, shell, stone, peel
};

/// The state that the published name of a row tells: "carrots, boiled" is cooked, "chickpeas,
/// canned, drained" drained, "pasta, dry" dry. Nothing where it tells none: honey, whole milk, a
/// tin with its liquid. A label says it itself: drained, or prepared, which is cooked.
[[nodiscard]] std::optional<FoodState> stateOf(const TableFood& food);

/// The state that words of preparation tell: "drained", "boiled and drained" (cooked); nothing for
/// others. Toasting and frying are done after weighing as often as before: they tell nothing.
[[nodiscard]] std::optional<FoodState> stateOfPreparation(std::string_view preparation);

/// Whether values of a row hold for what was weighed in that state: equal, or raw and dry where dry
/// means uncooked (rice, beans). What was dried from fresh is another thing.
[[nodiscard]] bool holdsFor(const TableFood& row, FoodState weighed);

}  // namespace nettare
