#pragma once

#include "core/quantity/quantity.h"

namespace nettare {

/// A length in millimetres.
class Length : public Quantity<Length> {
public:
    [[nodiscard]] static constexpr Length fromMillimetres(double value) { return Length{value}; }
    [[nodiscard]] constexpr double millimetres() const { return value_; }

private:
    friend class Quantity<Length>;
    constexpr explicit Length(double value) : Quantity{value} {}
};

}  // namespace nettare
