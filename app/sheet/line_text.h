#pragma once

#include <QString>

#include <functional>

#include "core/wording/line_reading.h"

namespace nettare {

// How the one text of a line is split. A middle dot, or the first comma, begins the preparation.

/// "fennel · trimmed, in wedges" or "fennel, trimmed, in wedges".
struct IngredientText {
    QString food, preparation;
};
/// A name that the line has already may hold commas itself.
[[nodiscard]] IngredientText splitIngredient(const QString& text, const QString& currentName = {});
[[nodiscard]] QString ingredientText(const QString& food, const QString& preparation);

/// "3 tbsp olive oil, for the marinade" as readLine() reads it; a middle dot is a comma. `isFood`
/// says whether words name a food: "globes fennel" does not, so "globe" counts it.
[[nodiscard]] LineReading readNewLine(const QString& text,
                                      const std::function<bool(const QString&)>& isFood);

}  // namespace nettare
