#pragma once

#include <compare>

namespace nettare {

/// What all linear quantities share: a double in one unit, added and compared only with its own
/// kind, scaled by numbers; the quotient of two is a number. There is no product of two and no
/// conversion from or to a bare number.
///
/// `Kind` is the class derived from it, so that the sum of two masses is a mass. Numbers
/// are meant to be finite; nothing is checked here.
///
/// Assumes: uncertainty is carried elsewhere (core/nutrition/linear_form.h); x - x is exactly zero
/// here, which is wrong for two weighings of the same thing.
template <class Kind>
class Quantity {
public:
    friend constexpr Kind operator+(Kind a, Kind b) { return Kind{a.value_ + b.value_}; }
    friend constexpr Kind operator-(Kind a, Kind b) { return Kind{a.value_ - b.value_}; }
    friend constexpr Kind operator-(Kind a) { return Kind{-a.value_}; }
    friend constexpr Kind operator*(Kind a, double factor) { return Kind{a.value_ * factor}; }
    friend constexpr Kind operator*(double factor, Kind a) { return Kind{factor * a.value_}; }
    friend constexpr Kind operator/(Kind a, double divisor) { return Kind{a.value_ / divisor}; }
    friend constexpr double operator/(Kind a, Kind b) { return a.value_ / b.value_; }
    friend constexpr auto operator<=>(Kind a, Kind b) { return a.value_ <=> b.value_; }
    friend constexpr bool operator==(Kind a, Kind b) { return a.value_ == b.value_; }

protected:
    constexpr explicit Quantity(double value) : value_{value} {}
    double value_;  ///< in the unit that the derived class names
};

}  // namespace nettare
