#pragma once

#include <string>
#include <string_view>

namespace nettare {

/// A measure as the Standard Reference writes it, taken apart.
struct Sr28Measure {
    std::string unit;       ///< "cup", "tbsp", "fl_oz", or the name of a piece: "large onion"
    std::string qualifier;  ///< "sliced", "3 in diameter"; empty where none
};

/// "cup, sliced", "cup slices", "large (3-1/4" dia)", "strip medium". A size alone is one of the
/// food that `foodName` begins with; pieces are named in the singular where `several` are counted.
[[nodiscard]] Sr28Measure readSr28Measure(std::string_view written, std::string_view foodName,
                                          bool several);

}  // namespace nettare
