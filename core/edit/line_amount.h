#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/recipe/recipe_document.h"

namespace nettare {

/// What a cook typed into the amount of a line, in the members that a line has for it.
struct LineAmount {
    std::string amount;                    ///< as typed, without unit or piece word
    std::optional<std::string> unit;       ///< symbol of a unit
    std::optional<std::string> piece;      ///< or a piece word, singular; neither: as before
    std::optional<MeasuredAmount> each{};  ///< what one piece holds: the 400 g of "2 x 400 g tins"
    std::optional<std::string> fill{};     ///< how the spoon is filled: "heaping"
};

/// What stands, and is typed, in place of an amount where there is none.
inline constexpr std::string_view kToTasteText = "to taste";

/// Splits "3 tbsp", "2 bulbs", "1 1/2 cups", "36", "400g". A plural becomes the singular. A text
/// that does not begin with a number is all amount, so that whoever reads it can say what is wrong.
/// `piece` is the piece word that the line has: it stays as it is where the word typed is a form
/// of it.
[[nodiscard]] LineAmount readLineAmount(std::string_view typed, std::string_view piece = {});

/// The amount of a line as people read and type it: "3 tbsp", "2 bulbs", "½ lemon", "2 x 400 g
/// tins", "to taste"; "36" where the piece word is the food's own name. What is no amount yet
/// stands alone.
[[nodiscard]] std::string lineAmountText(const LineEntry& line, std::string_view foodName);

}  // namespace nettare
