#pragma once

#include <string_view>

#include "core/edit/edit.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

// Edits of what stands above and beside the lines: title, note, yield, portion, targets and
// assumptions. Texts come as typed. Where nothing else is said, empty text fails with EmptyText and
// text that no document holds with the error of readRecipe(), at its place. A recipe stays one.

[[nodiscard]] Result<Edit> setTitle(const Json& document, std::string_view typed);
/// Empty text takes the note away.
[[nodiscard]] Result<Edit> setNote(const Json& document, std::string_view typed);

/// How many pieces the batch makes; what is no count yet is kept as typed.
[[nodiscard]] Result<Edit> setYield(const Json& document, std::string_view typed);
/// The word for one piece and for several.
[[nodiscard]] Result<Edit> setPieceWord(const Json& document, std::string_view typed);
[[nodiscard]] Result<Edit> setPiecesWord(const Json& document, std::string_view typed);

/// A portion in pieces, or in grams of the cooked dish (a decimal above zero).
[[nodiscard]] Result<Edit> setPortionPieces(const Json& document, std::string_view typed);
[[nodiscard]] Result<Edit> setPortionGrams(const Json& document, std::string_view typed);

/// Which end of a figure a target bounds.
enum class TargetEnd { AtMost, AtLeast };

/// Sets the ceiling or floor of that component and basis, in the component's unit; changes the one
/// there is; empty text takes it away.
[[nodiscard]] Result<Edit> setTarget(const Json& document, Component component, Basis per,
                                     TargetEnd end, std::string_view typed);

/// One of the values of Assumptions.
enum class Assumption {
    PieceSpread,
    VolumeSpread,
    SpreadFreedom,
    DeclarationSpread,
    CompositionSpread
};

/// Sets an assumption; empty text gives it its default back.
[[nodiscard]] Result<Edit> setAssumption(const Json& document, Assumption which,
                                         std::string_view typed);

/// The whole document as it was in an older state.
[[nodiscard]] Edit bringBack(const Json& document, const Json& older, std::string_view subject);

}  // namespace nettare
