#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// Photographs of packages: see Kitchen.

[[nodiscard]] Result<std::string> addPhoto(KitchenStore& store, std::string_view bytes,
                                           const std::string& at);
[[nodiscard]] Result<std::optional<std::string>> photoBytes(KitchenStore& store,
                                                            const std::string& hash);

}  // namespace nettare
