#pragma once

#include <compare>

#include "core/quantity/quantity.h"

namespace nettare {

/// A difference of two temperatures, in kelvin. 20 °C warmer is not 20 °C.
class TemperatureDifference : public Quantity<TemperatureDifference> {
public:
    [[nodiscard]] static constexpr TemperatureDifference fromKelvin(double value) {
        return TemperatureDifference{value};
    }
    [[nodiscard]] constexpr double kelvin() const { return value_; }

private:
    friend class Quantity<TemperatureDifference>;
    constexpr explicit TemperatureDifference(double value) : Quantity{value} {}
};

/// A temperature: a point, not an amount. Two temperatures have a difference and no sum.
/// Source of the scales: 0 °C = 273.15 K, °F = 9/5 °C + 32 (NIST SP 811, B.8).
/// Nothing here refuses what lies below absolute zero.
class Temperature {
public:
    [[nodiscard]] static constexpr Temperature fromCelsius(double value) {
        return Temperature{value + 273.15};
    }
    [[nodiscard]] static constexpr Temperature fromFahrenheit(double value) {
        return fromCelsius((value - 32.0) * 5.0 / 9.0);
    }
    [[nodiscard]] constexpr double kelvin() const { return kelvin_; }
    [[nodiscard]] constexpr double celsius() const { return kelvin_ - 273.15; }
    [[nodiscard]] constexpr double fahrenheit() const { return celsius() * 9.0 / 5.0 + 32.0; }

    friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
        return TemperatureDifference::fromKelvin(a.kelvin_ - b.kelvin_);
    }
    friend constexpr Temperature operator+(Temperature a, TemperatureDifference b) {
        return Temperature{a.kelvin_ + b.kelvin()};
    }
    friend constexpr auto operator<=>(Temperature, Temperature) = default;

private:
    constexpr explicit Temperature(double kelvin) : kelvin_{kelvin} {}
    double kelvin_;
};

}  // namespace nettare
