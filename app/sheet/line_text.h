#pragma once

#include <QString>

#include <functional>

namespace nettare {

// How the one text of a line is split. A middle dot, or the first comma, begins the preparation.

/// "fennel · trimmed, in wedges" or "fennel, trimmed, in wedges".
struct IngredientText {
    QString food, preparation;
};
/// A name that the line has already may hold commas itself.
[[nodiscard]] IngredientText splitIngredient(const QString& text, const QString& currentName = {});
[[nodiscard]] QString ingredientText(const QString& food, const QString& preparation);

/// "3 tbsp olive oil, for the marinade": amount with its unit or piece word, food, preparation.
struct NewLineText {
    QString amount;  ///< "3 tbsp", "2 cloves", "36"; empty where the text does not begin with one
    QString food, preparation;
};
/// `isFood` says whether words name a food: "cloves garlic" does not, so "cloves" counts it.
[[nodiscard]] NewLineText splitNewLine(const QString& text,
                                       const std::function<bool(const QString&)>& isFood);

}  // namespace nettare
