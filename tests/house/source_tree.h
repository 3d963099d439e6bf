#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "house/text_rules.h"

namespace nettare {

/// Paths below `root` of the files that git tracks, sorted; none where git is absent or `root` is
/// no work tree.
[[nodiscard]] std::vector<std::string> trackedFiles(const std::filesystem::path& root);

/// Paths of all regular files below `root`, sorted; hidden folders but .ci and build folders left
/// out. For a source tree that came without git.
[[nodiscard]] std::vector<std::string> walkedFiles(const std::filesystem::path& root);

/// The tracked files or, where there are none, the walked ones.
[[nodiscard]] std::vector<std::string> sourceTree(const std::filesystem::path& root);

/// Reads one file of the tree with its executable bit.
[[nodiscard]] SourceFile readSource(const std::filesystem::path& root, const std::string& name);

}  // namespace nettare
