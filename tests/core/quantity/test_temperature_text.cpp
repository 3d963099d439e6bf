#include "core/quantity/temperature_text.h"

#include <catch2/catch.hpp>
#include <type_traits>

#include "core/quantity/duration.h"

using namespace nettare;

namespace {

TemperatureText readDegrees(const char* text) {
    INFO(text);
    const auto temperature = readTemperature(text);
    REQUIRE(temperature);
    return *temperature;
}

TemperatureMeaning only(const char* text) {
    const TemperatureText temperature = readDegrees(text);
    REQUIRE(temperature.meanings.size() == 1);
    return temperature.meanings.front();
}

Fraction ratio(std::int64_t top, std::int64_t bottom) {
    return *Fraction::make(top, bottom);
}

template <class A, class B>
concept Added = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Compared = requires(A a, B b) {
    a < b;
};

}  // namespace

TEST_CASE("temperatures convert exactly", "[quantity]") {
    // NIST SP 811, B.8: °C = (°F - 32)/1.8.
    CHECK(celsiusOf(Fraction{212}) == Fraction{100});
    CHECK(celsiusOf(Fraction{32}) == Fraction{0});
    CHECK(celsiusOf(Fraction{-40}) == Fraction{-40});
    CHECK(celsiusOf(Fraction{165}) == ratio(665, 9));
    CHECK(fahrenheitOf(ratio(665, 9)) == Fraction{165});
    for (int degrees = -100; degrees <= 600; ++degrees)
        CHECK(fahrenheitOf(*celsiusOf(Fraction{degrees})) == Fraction{degrees});
}

TEST_CASE("temperatures are read as kitchens write them", "[quantity]") {
    for (const char* text : {"180 °C", "180°C", "180C", "180 c", "180 degrees C", "180 deg C",
                             "180 degrees Celsius", "180º C", "180 ℃", "180\u00A0°C"}) {
        CAPTURE(text);
        CHECK(only(text).scale == TemperatureScale::Celsius);
        CHECK(only(text).lowCelsius == Fraction{180});
        CHECK(only(text).highFahrenheit == Fraction{356});
    }
    for (const char* text :
         {"350F", "350 °F", "350 degrees F", "350 degrees Fahrenheit", "350 ℉"}) {
        CAPTURE(text);
        CHECK(only(text).scale == TemperatureScale::Fahrenheit);
        CHECK(only(text).lowFahrenheit == Fraction{350});
        CHECK(only(text).lowCelsius == ratio(1590, 9));
    }
    CHECK(only("-18 °C").lowCelsius == Fraction{-18});
    CHECK(only("−18 °C").lowCelsius == Fraction{-18});
    CHECK(only("0 °C").lowFahrenheit == Fraction{32});
    CHECK(only("37.5 °C").lowCelsius == ratio(75, 2));
    CHECK(only("37,5 °C").lowCelsius == ratio(75, 2));
}

TEST_CASE("a range of temperatures keeps both ends", "[quantity]") {
    for (const char* text : {"180-190 °C", "180–190 °C", "180 to 190 °C", "180 °C to 190 °C"}) {
        CAPTURE(text);
        CHECK(only(text).lowCelsius == Fraction{180});
        CHECK(only(text).highCelsius == Fraction{190});
    }
    CHECK(only("-20 to -18 °C").highCelsius == Fraction{-18});
    for (const char* text : {"190-180 °C", "180 °C to 350 °F", "180 °C to"})
        CHECK_FALSE(readTemperature(text));
}

TEST_CASE("degrees without a scale are asked, not guessed", "[quantity]") {
    for (const char* text : {"180 degrees", "180°", "180 deg"}) {
        const TemperatureText both = readDegrees(text);
        CAPTURE(text);
        CHECK(both.mustBeAsked());
        REQUIRE(both.meanings.size() == 2);
        CHECK(both.meanings[0].lowCelsius == Fraction{180});
        CHECK(both.meanings[1].lowFahrenheit == Fraction{180});
    }
    CHECK_FALSE(readDegrees("180 °C").mustBeAsked());
}

TEST_CASE("about a temperature is ten kelvin to either side", "[quantity]") {
    const TemperatureText about = readDegrees("about 75 °C");
    const TemperatureRange range = about.range(about.meanings.front());
    CHECK(range.low.celsius() == Approx(65));
    CHECK(range.high.celsius() == Approx(85));
    const TemperatureText plain = readDegrees("75 °C");
    CHECK(plain.range(plain.meanings.front()).low.celsius() == Approx(75));
}

TEST_CASE("a fan oven is set 20 to 25 degrees lower", "[quantity]") {
    // Common practice; sources differ between 20 and 25 °C.
    const TemperatureRange fan = fanSettingFor(Temperature::fromCelsius(180));
    CHECK(fan.low.celsius() == Approx(155));
    CHECK(fan.high.celsius() == Approx(160));
    const TemperatureRange back = conventionalFor(Temperature::fromCelsius(160));
    CHECK(back.low.celsius() == Approx(180));
    CHECK(back.high.celsius() == Approx(185));
    for (const char* text : {"160 °C fan", "160°C (fan)", "fan 160C", "160 °C fan oven"}) {
        CAPTURE(text);
        CHECK(readDegrees(text).fan);
    }
    CHECK_FALSE(readDegrees("160 °C").fan);
}

TEST_CASE("a safety limit is never rounded to its unsafe side", "[quantity]") {
    using enum SafetyLimit;
    // Poultry 165 °F (US government chart, foodsafety.gov): 73.89 °C, shown as 74.
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{165}), AtLeast) == 74);
    // 73.33 °C would round to 73 and stay below what is asked.
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{164}), AtLeast) == 74);
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{145}), AtLeast) == 63);
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{160}), AtLeast) == 72);
    // A cold limit: 40 °F is 4.44 °C, and 5 would be too warm.
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{40}), AtMost) == 4);
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{0}), AtMost) == -18);
    CHECK(safeWholeDegrees(*celsiusOf(Fraction{0}), AtLeast) == -17);
    for (int degrees = -100; degrees <= 600; ++degrees) {
        const Fraction exact = *celsiusOf(Fraction{degrees});
        CHECK(Fraction{safeWholeDegrees(exact, AtLeast)} >= exact);
        CHECK(Fraction{safeWholeDegrees(exact, AtMost)} <= exact);
        CHECK(safeWholeDegrees(exact, AtLeast) - safeWholeDegrees(exact, AtMost) <= 1);
    }
}

TEST_CASE("what is no temperature is not read as one", "[quantity]") {
    for (const char* text : {"", "180", "C", "°C", "180 cups", "180 °C flour", "180 cm", "6 min",
                             "-300 °C", "9999 °C", "1,500 °C", "gas mark 4", "- °C"}) {
        CAPTURE(text);
        CHECK_FALSE(readTemperature(text));
    }
}

TEST_CASE("a time and a temperature never mix", "[quantity]") {
    STATIC_REQUIRE_FALSE(Added<Temperature, Duration>);
    STATIC_REQUIRE_FALSE(Added<TemperatureDifference, Duration>);
    STATIC_REQUIRE_FALSE(Compared<TemperatureDifference, Duration>);
    STATIC_REQUIRE_FALSE(std::is_convertible_v<Duration, Temperature>);
    STATIC_REQUIRE_FALSE(std::is_convertible_v<Temperature, Duration>);
    CHECK(Duration::fromSeconds(90).minutes() == 1.5);
}
