#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// One row of the ingredient table, as values. Grams and energy are of the whole batch, as eaten:
/// less what is left over.
struct SheetLine {
    std::string id;
    std::string amount;  ///< "3 tbsp", as lineAmountText() writes it; "to taste"
    std::string name, preparation;

    LineCounting counting = LineCounting::Counted;  ///< by the recipe's own rules

    double grams = 0;      ///< eaten
    double halfWidth = 0;  ///< of `grams`, 95 %
    double leftOver = 0;   ///< grams used that are not eaten

    std::optional<Way> way;      ///< nothing for a kept recipe and for a line without grams
    int readings = 0;            ///< of the weighing or the series
    bool scaled = false;         ///< weighed for another amount
    bool trimmed = false;        ///< from purchased to edible
    bool sizeNotSaid = false;    ///< several measures fitted
    bool spreadAssumed = false;  ///< its uncertainty rests on an assumed spread

    double kcal = 0;         ///< of the known parts
    double kcalAtLeast = 0;  ///< bounds; both equal `kcal` where nothing is missing
    std::optional<double> kcalAtMost;
    bool kcalComplete = true;
    double energyShare = 0;  ///< of the energy of all lines, 0 to 1, by the known parts
};

/// The lines of the main recipe in their order. `document` is the one that the dossier was made
/// from, `cooked` is of that dossier.
[[nodiscard]] std::vector<SheetLine> sheetLines(const RecipeDocument& document,
                                                const Dossier& dossier, const Cooked& cooked);

}  // namespace nettare
