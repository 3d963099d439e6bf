#pragma once

#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"
#include "db/kitchen/own_food_record.h"

namespace nettare {

// Own foods: see Kitchen.

[[nodiscard]] Result<std::vector<OwnFoodRecord>> ownFoodsIn(KitchenStore& store);
[[nodiscard]] Result<std::vector<OwnFood>> ownVersions(KitchenStore& store, const std::string& id);
[[nodiscard]] Result<TableRow> addOwnVersion(KitchenStore& store, const OwnFood& own,
                                             const std::string& at);
[[nodiscard]] Result<void> addOwnEvent(KitchenStore& store, const OwnFoodEvent& event);

/// The food of an own row; nothing where there is none of that version.
[[nodiscard]] Result<std::optional<TableFood>> ownFoodAt(KitchenStore& store, const TableRow& row);

/// A stored version. Fails: KitchenDamaged.
[[nodiscard]] Result<OwnFood> ownVersionFrom(const KitchenStore& store, const std::string& text);

/// How an event is called in the file.
[[nodiscard]] std::optional<OwnFoodEventKind> ownEventKind(std::string_view word);

}  // namespace nettare
