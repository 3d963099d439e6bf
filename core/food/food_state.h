#pragma once

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

}  // namespace nettare
