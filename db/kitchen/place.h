#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/support/result.h"

namespace nettare {

/// Which file it is that stands at a path, whatever its name.
struct FileIdentity {
    std::uintmax_t device = 0, number = 0;
    bool operator==(const FileIdentity&) const = default;
};

/// All zeros where nothing stands there.
[[nodiscard]] FileIdentity fileAt(const std::string& path);

/// What the file system allows where a kitchen stands.
struct KitchenPlace {
    std::string file;       ///< absolute, without symbolic links
    bool writable = false;  ///< the file, and its folder for what SQLite keeps beside it
    /// Changes wait beside the file and are not in it yet.
    bool unfinished = false;
    bool shared = false;  ///< somebody works in it, or did until killed
};

/// Looks at a path, opening nothing. Fails: KitchenMissing, KitchenIsFolder, KitchenEmpty,
/// NotAKitchen (a device), KitchenUnreadable, KitchenNeighbour (what stands where SQLite keeps its
/// files is none).
[[nodiscard]] Result<KitchenPlace> placeOf(const std::string& path);

/// The ending, where a path ends as the files beside a kitchen do; no kitchen is written there.
[[nodiscard]] std::optional<std::string_view> besideEnding(std::string_view path);

}  // namespace nettare
