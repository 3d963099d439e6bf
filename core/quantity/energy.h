#pragma once

#include "core/quantity/quantity.h"

namespace nettare {

/// An energy in kilojoules. The thermochemical kilocalorie is 4.184 kJ exactly (NIST SP 811, B.8).
/// Tables and labels state kilojoules and kilocalories each from their own factors; convert only
/// where one of the two is missing.
class Energy : public Quantity<Energy> {
public:
    [[nodiscard]] static constexpr Energy fromKilojoules(double value) { return Energy{value}; }
    [[nodiscard]] constexpr double kilojoules() const { return value_; }

    [[nodiscard]] static constexpr Energy fromKilocalories(double value) {
        return Energy{value * 4.184};
    }
    [[nodiscard]] constexpr double kilocalories() const { return value_ / 4.184; }

private:
    friend class Quantity<Energy>;
    constexpr explicit Energy(double value) : Quantity{value} {}
};

}  // namespace nettare
