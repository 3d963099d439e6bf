#pragma once

#include <QString>

#include <optional>

#include "app/scale/left_over.h"

namespace nettare {

/// What the cook calls it, else what it is: "marinade", "olive oil, garlic and 3 more", "cooking
/// water".
[[nodiscard]] QString leftOverName(const Json& document, const LeftOver& left);

/// All lines that it is of: "olive oil, garlic, lemon juice"; empty where it is of none.
[[nodiscard]] QString leftOverFoods(const Json& document, const LeftOver& left);

/// What will be computed, in a sentence: "12.5 g of 51 g: olive oil, garlic, lemon juice lose the
/// same share, 24 %." Without grams, while nothing is typed, what would be. `there_g` is what
/// gramsThere() says.
[[nodiscard]] QString leftOverSentence(const Json& document, const LeftOver& left,
                                       std::optional<double> grams, std::optional<double> there_g);

/// What was weighed of it so far; nothing where nothing was.
[[nodiscard]] std::optional<double> gramsLeft(const Evaluation& evaluation, const LeftOver& left);

/// Grams of the lines that it is left of, before it is taken off them; nothing where lines do not
/// tell.
[[nodiscard]] std::optional<double> gramsThere(const Evaluation& evaluation, const LeftOver& left);

/// More is left than there was; empty where it is not.
[[nodiscard]] QString tooMuchLeft(double grams, std::optional<double> there_g);

/// What is still missing: "Tick what is in the mixture."; empty where nothing is.
[[nodiscard]] QString stillToSay(const LeftOver& left);

}  // namespace nettare
