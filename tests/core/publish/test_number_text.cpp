#include "core/publish/number_text.h"

#include <catch2/catch.hpp>

#include "skewers.h"

using namespace nettare;
using enum nettare::Component;

TEST_CASE("a printed number is rounded once and ties go up", "[publish]") {
    CHECK(numberAt(0, 58.4) == "58");
    CHECK(numberAt(0, 58.5) == "59");
    CHECK(numberAt(2, 2.675) == "2.68");  // the double lies below the tie; 12 digits decide
    CHECK(numberAt(1, 0.05) == "0.1");
    CHECK(numberAt(1, 0.0499) == "0.0");
    CHECK(numberAt(1, 7) == "7.0");
}

TEST_CASE("a lower bound rounds down and an upper bound up", "[publish]") {
    CHECK(numberAt(1, 3.19, Direction::Floor) == "3.1");
    CHECK(numberAt(1, 3.91, Direction::Ceiling) == "4.0");
    CHECK(numberAt(1, 3.1, Direction::Floor) == "3.1");
    CHECK(numberAt(1, 3.1, Direction::Ceiling) == "3.1");
}

TEST_CASE("less than zero has a minus sign, and nothing has none", "[publish]") {
    CHECK(numberAt(1, -22.46) == "−22.5");
    CHECK(numberAt(1, -0.04) == "0.0");
    CHECK(numberAt(0, -12345) == "−12\u202F345");
}

TEST_CASE("thousands are parted from five digits on", "[publish]") {
    CHECK(numberAt(0, 9999.4) == "9999");
    CHECK(numberAt(0, 9999.5) == "10\u202F000");
    CHECK(numberAt(1, 12345.67) == "12\u202F345.7");
    CHECK(numberAt(0, 1234567) == "1\u202F234\u202F567");
}

TEST_CASE("a half-width shows at least one step unless it is zero", "[publish]") {
    CHECK(halfWidthText(0, 4.9) == "± 5");
    CHECK(halfWidthText(0, 0.2) == "± 1");
    CHECK(halfWidthText(1, 0.04) == "± 0.1");
    CHECK(halfWidthText(1, 0) == "± 0.0");
    CHECK(halfWidthText(0, 12345) == "± 12\u202F345");
}

TEST_CASE("a complete figure reads as value, unit and half-width of 95 %", "[publish]") {
    // 1.960 x 2.5 = 4.9
    CHECK(figureText(skewers::known(ENERC_KCAL, 144.2, 2.5)) == "144 kcal ± 5");
    CHECK(figureText(skewers::known(FAT, 7.25)) == "7.3 g ± 0.0");
    CHECK(knownShareText(skewers::known(FAT, 7.25)).empty());
}

TEST_CASE("a figure with a missing part says at least, and at most where there is a bound",
          "[publish]") {
    CHECK(figureText(skewers::open(FAMS, 3.19, 3.91, 0.9)) == "at least 3.1 g, at most 4.0 g");
    CHECK(figureText(skewers::open(VITC, 10.59, {}, 0.9)) == "at least 10.5 mg");
    CHECK(knownShareText(skewers::open(VITC, 10.59, {}, 0.8299)) == "known for 82 % of the weight");
    CHECK(knownShareText(skewers::open(VITC, 0, {}, 0.999)) == "known for 99 % of the weight");
}
