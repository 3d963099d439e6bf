#pragma once

#include "core/quantity/quantity.h"

namespace nettare {

/// A mass in grams. May be negative only as a difference.
class Mass : public Quantity<Mass> {
public:
    [[nodiscard]] static constexpr Mass fromGrams(double value) { return Mass{value}; }
    [[nodiscard]] constexpr double grams() const { return value_; }

private:
    friend class Quantity<Mass>;
    constexpr explicit Mass(double value) : Quantity{value} {}
};

}  // namespace nettare
