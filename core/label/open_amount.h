#pragma once

#include <optional>
#include <string>
#include <vector>

namespace nettare {

/// An amount of which a part may be unknown: "at least a, at most b". Equal ends are a known
/// amount. Unit and basis are the user's of this value.
struct OpenAmount {
    double atLeast = 0;                  ///< the known parts and the least of the missing ones
    std::optional<double> atMost;        ///< nothing where no bound is known
    std::vector<std::string> missingIn;  ///< names of the foods that leave it open
};

}  // namespace nettare
