#pragma once

#include <string>
#include <string_view>

namespace nettare {

/// Text with each run of ASCII white space, line feeds included, as one space, and none at its
/// ends: headers and names that a table breaks over lines.
[[nodiscard]] std::string oneLine(std::string_view text);

}  // namespace nettare
