#pragma once

#include <string>

namespace nettare {

/// Where the program's own data stands: the environment variable NETTARE_SHARE, else the folder
/// ../share/nettare beside the program's own.
[[nodiscard]] std::string shareFolder();

}  // namespace nettare
