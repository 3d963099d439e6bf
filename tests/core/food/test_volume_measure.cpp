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
    for (const char* word : {"clove", "bulb", "large egg", "cup, sliced", "Cup", "g", "lb", ""}) {
        INFO(word);
        CHECK_FALSE(volumeOfMeasure(word));
    }
}
