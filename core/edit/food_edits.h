#pragma once

#include <string_view>

#include "core/edit/edit.h"
#include "core/food/component.h"
#include "core/food/table_food.h"

namespace nettare {

/// A value of a food as a cook states it, each part as typed.
struct TypedValue {
    std::string_view per100g;  ///< in the component's unit
    std::string_view within;   ///< half-width; may be empty
    std::string_view reason;   ///< where the value comes from; never empty
};

/// States a value of a food with its reason, in place of the one that was stated before. Fails:
/// UnknownReference for a food that is not there; EmptyText without number or reason; as
/// readRecipe() for what no document holds, such as a value of a kept recipe.
[[nodiscard]] Result<Edit> setStatedValue(const Json& document, std::string_view food,
                                          Component component, const TypedValue& typed);

/// Says what part of a food's sugars is added, and why, in place of what was said or stated of them
/// before. Fails: UnknownReference for a food that is not there or a kept recipe, whose added
/// sugars are those of its foods; EmptyText without a reason, or without an amount where `kind` is
/// Stated; as readRecipe() for what no document holds.
[[nodiscard]] Result<Edit> setAddedSugars(const Json& document, std::string_view food,
                                          AddedSugarKind kind, std::string_view per100g,
                                          std::string_view reason);

/// Takes the values of a food from another row of a table. Lines keep how their grams were found:
/// what was weighed stays weighed. Fails: UnknownReference for a food that is not there or a kept
/// recipe; as readRecipe() for a row that no document holds.
[[nodiscard]] Result<Edit> setTableRow(const Json& document, std::string_view food,
                                       const TableRow& row);

}  // namespace nettare
