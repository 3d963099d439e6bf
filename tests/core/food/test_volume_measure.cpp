#include "core/food/volume_measure.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

/// NIST Handbook 44, appendix C: the US gallon is 231 cubic inches, the inch 2.54 cm.
constexpr double kGallonMl = 231 * 2.54 * 2.54 * 2.54;

double ml(std::string_view unit) {
    const auto volume = volumeOfMeasure(unit);
    REQUIRE(volume);
    return *volume;
}

}  // namespace

TEST_CASE("a table's spoons, cups and pints are parts of the US gallon", "[food]") {
    // NIST Handbook 44, appendix C: gallon = 4 quarts = 8 pints = 16 cups = 128 fluid ounces =
    // 256 tablespoons = 768 teaspoons.
    CHECK(4 * ml("quart") == Approx(kGallonMl).epsilon(1e-14));
    CHECK(8 * ml("pint") == Approx(kGallonMl).epsilon(1e-14));
    CHECK(16 * ml("cup") == Approx(kGallonMl).epsilon(1e-14));
    CHECK(128 * ml("fl_oz") == Approx(kGallonMl).epsilon(1e-14));
    CHECK(256 * ml("tbsp") == Approx(kGallonMl).epsilon(1e-14));
    CHECK(768 * ml("tsp") == Approx(kGallonMl).epsilon(1e-14));
}

TEST_CASE("metric volumes are what they say", "[food]") {
    CHECK(ml("l") == 1000);
    CHECK(ml("ml") == 1);
}

TEST_CASE("words that count pieces or weigh have no volume", "[food]") {
    for (const char* word : {"clove", "bulb", "large egg", "cup, sliced", "Cup", "g", "lb", "egg",
                             "dash", "stick", ""}) {
        INFO(word);
        CHECK_FALSE(volumeOfMeasure(word));
    }
}

TEST_CASE("a table's word is a line's unit where both hold the same", "[food]") {
    using enum MeasureSystem;
    const auto is = [](const char* word, const char* symbol, MeasureSystem system) {
        return isMeasuredIn(word, *findUnit(symbol, system));
    };
    CHECK(is("fl_oz", "fl oz", UsCustomary));
    CHECK(is("fl_oz", "us fl oz", Metric));
    CHECK_FALSE(is("fl_oz", "fl oz", UsLabel));
    CHECK_FALSE(is("fl_oz", "fl oz", Imperial));
    CHECK(is("pint", "us pint", Imperial));
    CHECK_FALSE(is("pint", "pint", Imperial));
    CHECK(is("cup", "cup", UsCustomary));
    CHECK_FALSE(is("cup", "cup", Metric));
    CHECK_FALSE(is("cup", "tbsp", UsCustomary));
    CHECK(is("dash", "dash", Metric));
    CHECK_FALSE(is("stick", "stick", UsCustomary));
}
