#pragma once

#include <optional>

#include "core/food/table_food.h"

namespace nettare {

/// Why a table's refuse may not be what a kitchen takes off.
enum class RefuseDoubt {
    ShellIfBoughtInShell,  ///< nuts and seeds: most are bought without it
    PeelThoughEaten,       ///< the peel, although the values are for the food with its skin
    Gristle,               ///< taken out in the laboratory, which a kitchen does not trim
    SkinOfSkinless,        ///< counts the skin of what is sold as skinless
    WrongSum,              ///< the published parts do not add up to the published percentage
};

/// What is doubtful about the refuse of a row, by its note; nothing where it is plain or none.
/// Source: the table's own notes as this project words them (resources/starter/foods.txt), read
/// against what kitchens buy (common practice).
[[nodiscard]] std::optional<RefuseDoubt> refuseDoubt(const TableFood& food);

}  // namespace nettare
