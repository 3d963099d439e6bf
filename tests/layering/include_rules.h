#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace nettare {

/// One sentence for each forbidden #include in the .h and .cpp files of core, db, app and tests
/// below `root`: "core/a.cpp:3 includes <QString>: core knows no Qt, so that ...". Files are read
/// in the order of their names; the planted violations of this folder are left out.
[[nodiscard]] std::vector<std::string> forbiddenIncludes(const std::filesystem::path& root);

}  // namespace nettare
