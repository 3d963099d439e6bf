#include <catch2/catch.hpp>

#include "core/quantity/energy.h"
#include "core/quantity/length.h"
#include "core/quantity/mass.h"
#include "core/quantity/temperature.h"
#include "core/quantity/unit.h"
#include "core/quantity/volume.h"

using namespace nettare;

namespace {

template <class A, class B>
concept CanAdd = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept CanMultiply = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept CanCompare = requires(A a, B b) {
    a < b;
};

static_assert(CanAdd<Mass, Mass> && CanMultiply<Mass, double> && CanMultiply<double, Mass>);
static_assert(!CanAdd<Mass, double> && !CanAdd<Mass, Volume> && !CanMultiply<Mass, Mass>);
static_assert(!CanCompare<Mass, Volume> && !CanCompare<Mass, double>);
static_assert(!CanAdd<Temperature, Temperature> && CanAdd<Temperature, TemperatureDifference>);
static_assert(!std::is_convertible_v<double, Mass> && !std::is_convertible_v<Mass, double>);
static_assert(std::is_same_v<decltype(Mass::fromGrams(1) / Mass::fromGrams(2)), double>);
static_assert(std::is_same_v<decltype(Length::fromMillimetres(1) * 2.0), Length>);

}  // namespace

TEST_CASE("conversion factors are the published definitions", "[quantity]") {
    // NIST Handbook 44, appendix C: 1 lb = 453.59237 g; 1 gal = 231 in3, 1 in = 25.4 mm, all exact.
    const double gallon = 231 * 16.387064;
    CHECK(massOf(1, *findUnit("lb", MeasureSystem::UsCustomary)).grams() == 453.59237);
    CHECK(massOf(16, *findUnit("oz", MeasureSystem::UsCustomary)).grams() == 453.59237);
    const auto us = [](const char* symbol) {
        return volumeOf(1, *findUnit(symbol, MeasureSystem::UsCustomary)).millilitres();
    };
    CHECK(us("cup") * 16 == Approx(gallon).epsilon(1e-14));
    CHECK(us("tbsp") * 256 == Approx(gallon).epsilon(1e-14));
    CHECK(us("tsp") * 768 == Approx(gallon).epsilon(1e-14));
    // 21 CFR 101.9(b)(5)(viii): 5, 15 and 240 mL.
    CHECK(volumeOf(1, *findUnit("cup", MeasureSystem::UsLabel)).millilitres() == 240);
    CHECK(volumeOf(3, *findUnit("tbsp", MeasureSystem::UsLabel)).millilitres() == 45);
    CHECK(volumeOf(1, *findUnit("cup", MeasureSystem::Metric)).millilitres() == 250);
    CHECK(findUnit("stone", MeasureSystem::Metric) == nullptr);
}

TEST_CASE("a temperature is a point and a difference is not", "[quantity]") {
    // NIST SP 811, B.8; 165 °F is 73.89 °C.
    CHECK(Temperature::fromFahrenheit(165).celsius() == Approx(73.8889).margin(5e-5));
    CHECK(Temperature::fromCelsius(100).fahrenheit() == Approx(212));
    CHECK((Temperature::fromCelsius(20) - Temperature::fromCelsius(0)).kelvin() == Approx(20));
}

TEST_CASE("the thermochemical kilocalorie is 4.184 kJ", "[quantity]") {
    CHECK(Energy::fromKilocalories(1).kilojoules() == 4.184);  // NIST SP 811, B.8
    CHECK(Energy::fromKilojoules(418.4).kilocalories() == Approx(100));
}
