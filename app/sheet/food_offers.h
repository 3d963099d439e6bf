#pragma once

#include <QString>

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
};

/// The foods of the open draft whose names hold the words, then those of the table; best first.
/// No words, no offers.
[[nodiscard]] std::vector<FoodOffer> foodOffers(const KitchenSession& kitchen,
                                                const QString& words);

/// The rows that an offer brings into the draft; nothing where the draft has the food already.
[[nodiscard]] std::optional<TableFood> broughtBy(const KitchenSession& kitchen,
                                                 const FoodOffer& offer);

}  // namespace nettare
