#pragma once

#include <string>

namespace nettare {

/// A difference beside its two ends, written so that a reader who subtracts finds it.
struct DifferenceText {
    std::string before, after;
    std::string difference;  ///< with "+" or U+2212, "0" without
};

/// Writes the three with as many decimals as they need to agree: from `decimals` to three more.
/// Where these do not do, the difference is that of the ends as they are written.
[[nodiscard]] DifferenceText differenceText(int decimals, double before, double after);

}  // namespace nettare
