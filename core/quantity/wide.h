#pragma once

#include <cstdint>
#include <limits>
#include <optional>

namespace nettare {

/// 128-bit integer of both our compilers, for exact products of two 64-bit numbers and for the
/// sum of two such products. No standard type is as wide.
__extension__ using Wide = __int128;

/// The number in 64 bits, or nothing where it does not fit.
[[nodiscard]] constexpr std::optional<std::int64_t> narrowed(Wide wide) {
    if (wide > std::numeric_limits<std::int64_t>::max() ||
        wide < std::numeric_limits<std::int64_t>::min())
        return std::nullopt;
    return static_cast<std::int64_t>(wide);
}

/// Greatest common divisor of two numbers, not negative, by Euclid; 0 only where both are 0.
[[nodiscard]] constexpr Wide commonDivisor(Wide a, Wide b) {
    if (a < 0) a = -a;
    if (b < 0) b = -b;
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

}  // namespace nettare
