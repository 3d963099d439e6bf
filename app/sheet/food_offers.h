#pragma once

#include <QString>

#include <functional>
#include <optional>
#include <vector>

#include "core/edit/line_edits.h"
#include "core/food/table_food.h"

namespace nettare {

class KitchenSession;

/// A food that fits what was typed.
struct FoodOffer {
    FoodChoice choice;
    QString text;  ///< as the list shows it: name and energy
    /// It fits only if the words hold a slip: it is shown, and never taken without being chosen.
    bool forgiven = false;
};

/// The foods of the open draft whose names hold the words, then the newest revisions of the
/// kitchen's other recipes, then foods of the table; best first. No words, no offers.
[[nodiscard]] std::vector<FoodOffer> foodOffers(const KitchenSession& kitchen,
                                                const QString& words);

/// True where an offer fits the words as they stand.
[[nodiscard]] bool isFoodAsTyped(const KitchenSession& kitchen, const QString& words);

/// Applies an edit that gives a line the offered food, with what the draft does not hold of it yet.
/// `done` follows at once; for a kept recipe when the kitchen has read it.
void applyOffer(KitchenSession& kitchen, const Edit& edit, const FoodOffer& offer,
                std::function<void(const Result<void>&)> done);

}  // namespace nettare
