#pragma once

#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "core/support/result.h"

namespace nettare {

/// A file that the text form was made from.
struct TableInput {
    std::string name;
    std::string sha256;  ///< 64 hexadecimal digits
};

/// All that a folder such as resources/starter says.
struct TableText {
    std::string table;
    std::string release;
    std::string citation;
    std::vector<TableInput> inputs;
    std::vector<TableFood> foods;       ///< by number; spreads without an assumed one
    std::vector<std::string> everyday;  ///< numbers of foods that come first, in order
};

/// Reads table.txt, foods.txt, components.txt, spreads.txt, measures.txt, other_names.txt,
/// kitchen_names.txt, traits.txt and everyday.txt of the folder. Fails at the first thing that is
/// wrong, with file and line; beside the codes of readTextTable and RowReader: DuplicateId (a
/// number or key twice), FoodNotFound, ComponentUnknown, NotOneOf (a word outside its list),
/// MissingKey (value "key": a needed line is absent), UnknownReference (a spread without its
/// value), TooFewItems (no foods).
[[nodiscard]] Result<TableText> readTableText(const std::string& folder);

}  // namespace nettare
