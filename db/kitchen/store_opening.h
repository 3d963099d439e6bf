#pragma once

#include <memory>
#include <string>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

using OpenedStore = Result<std::unique_ptr<KitchenStore>>;

/// See Kitchen::open(), create(), inMemory() and openCopy(). They throw SQLite::Exception.
[[nodiscard]] OpenedStore openStore(const std::string& path, KitchenAccess access);
[[nodiscard]] Result<void> createStore(const std::string& path, const std::string& at);
[[nodiscard]] OpenedStore storeInMemory(const std::string& at);
[[nodiscard]] OpenedStore copyInMemory(const std::string& path);

}  // namespace nettare
