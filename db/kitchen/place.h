#pragma once

#include <string>

#include "core/support/result.h"

namespace nettare {

/// What the file system allows where a kitchen stands.
struct KitchenPlace {
    std::string file;       ///< absolute, without symbolic links
    bool writable = false;  ///< the file, and its folder for what SQLite keeps beside it
    /// Changes wait beside the file and are not in it yet.
    bool unfinished = false;
    bool shared = false;  ///< somebody works in it, or did until killed
};

/// Looks at a path, opening nothing. Fails: KitchenMissing, KitchenIsFolder, KitchenEmpty,
/// NotAKitchen (a device), KitchenUnreadable.
[[nodiscard]] Result<KitchenPlace> placeOf(const std::string& path);

}  // namespace nettare
