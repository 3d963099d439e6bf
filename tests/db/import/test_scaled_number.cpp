#include "db/import/scaled_number.h"

#include <catch2/catch.hpp>
#include <string>

namespace nettare {

TEST_CASE(
    "numbers of tables are read with a point, a comma where the table says so, or an exponent",
    "[import]") {
    CHECK(readScaledNumber("12.5") == 12.5);
    CHECK(readScaledNumber("0") == 0);
    CHECK(readScaledNumber("-3") == -3);
    CHECK(readScaledNumber("12,5", ',') == 12.5);
    CHECK(readScaledNumber("4.7e-7") == 4.7e-7);
    CHECK(readScaledNumber("1E+2") == 100);
    CHECK(readScaledNumber(".5") == 0.5);
}

TEST_CASE("what is no number stays none: traces, limits, groups of thousands, words", "[import]") {
    for (const char* text : {"", "tr", "trace", "<0.1", "1,234", "1.234,5", "12 5", " 1", "1 ",
                             "+1", "1.", "e5", "1e", "nan", "inf", "0x10", "1e999999", "1/2"})
        CHECK_FALSE(readScaledNumber(text));
    CHECK_FALSE(readScaledNumber("12.5", ','));
    CHECK_FALSE(readScaledNumber("1e99999999999", '.', 3));
    CHECK_FALSE(readScaledNumber("1e400", '.', 3));
}

TEST_CASE("a power of ten moves the point without a rounding error of its own", "[import]") {
    CHECK(readScaledNumber("0.181", '.', 3) == 181.0);
    CHECK(readScaledNumber("0.00002744", '.', 6) == 27.44);
    CHECK(readScaledNumber("4.7e-7", '.', 6) == 0.47);
    CHECK(readScaledNumber("1,5", ',', -3) == 0.0015);
    CHECK(readScaledNumber("-0", '.', 3) == 0);
}

TEST_CASE("grams turn into milligrams, but kilojoules into no kilocalories and IU into nothing",
          "[import]") {
    CHECK(powerOfTenBetween("g", "mg") == 3);
    CHECK(powerOfTenBetween("g", "µg") == 6);
    CHECK(powerOfTenBetween("mcg", "µg") == 0);
    CHECK(powerOfTenBetween("ng", "mg") == -6);
    CHECK(powerOfTenBetween("kcal", "kcal") == 0);
    CHECK_FALSE(powerOfTenBetween("kJ", "kcal"));
    CHECK_FALSE(powerOfTenBetween("IU", "µg"));
    CHECK_FALSE(powerOfTenBetween("g", "kcal"));
    CHECK_FALSE(powerOfTenBetween("", "g"));
}

}  // namespace nettare
