#pragma once

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// See Kitchen::verify().
[[nodiscard]] Result<KitchenCheck> checkKitchen(KitchenStore& store);

}  // namespace nettare
