#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit.h"
#include "core/food/table_food.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

// Edits of ingredient lines. Lines go by their id. Fail: UnknownReference where there is no such
// line; EmptyText, TextTooLong or TextNotClean for texts, at their place. A recipe stays one.

/// An edit of a line, and what no longer says how many grams it is.
struct LineEdit {
    Edit edit;
    std::string line;                  ///< its id
    std::vector<std::string> unbound;  ///< members that went: "weighed", "series", "assumed" ...
};

/// The food that a line is to have: one of the document's, a row of a table, or a kept recipe.
struct FoodChoice {
    std::string existing;  ///< id of a food of the document; empty: row or recipe
    TableRow row;
    std::string name;      ///< as the cook calls it
    std::string recipe{};  ///< "tomato-sauce#2"; empty: the row
};

/// Sets amount and unit from typed text, as readLineAmount() reads it; a number alone keeps the
/// unit. What is no amount yet is kept as typed.
///
/// A line keeps the amount that its grams were weighed or assumed for, so that they scale. Another
/// unit or piece word ends every binding to grams. Typing passes by many units, so whoever lets a
/// cook type on takes the edit before back first; what it ended is then there again.
[[nodiscard]] Result<LineEdit> setLineAmount(const Json& document, std::string_view line,
                                             std::string_view typed);

/// Gives the line another food. The entry of the same row is used again, else one is added; the
/// food before goes where nothing uses it. Another food ends every binding to grams. Fails beside
/// that: UnknownReference for a food that is not there, and as readRecipe() for the choice.
[[nodiscard]] Result<LineEdit> setLineFood(const Json& document, std::string_view line,
                                           const FoodChoice& choice);

/// Empty text takes the preparation away.
[[nodiscard]] Result<LineEdit> setPreparation(const Json& document, std::string_view line,
                                              std::string_view typed);

/// The cook's choice among the ways to grams; nothing gives the best open one.
[[nodiscard]] Result<LineEdit> setWay(const Json& document, std::string_view line,
                                      std::optional<Way> way);

/// A new line at that index, at most the number of lines, with an id of its own. A number without a
/// unit counts pieces of the food. Fails beside that: as setLineFood(), TooManyItems.
[[nodiscard]] Result<LineEdit> addLine(const Json& document, std::size_t at, std::string_view typed,
                                       const FoodChoice& choice, std::string_view preparation);

/// Takes a line away, out of every residue too; a residue without lines goes, and a food that
/// nothing uses. Readings stay. Fails beside that: LastLine.
[[nodiscard]] Result<LineEdit> removeLine(const Json& document, std::string_view line);

/// `to` is its index afterwards.
[[nodiscard]] Result<LineEdit> moveLine(const Json& document, std::string_view line,
                                        std::size_t to);

}  // namespace nettare
