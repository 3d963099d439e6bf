#include <catch2/catch.hpp>
#include <charconv>
#include <random>
#include <string>

#include "core/quantity/decimal.h"

using namespace nettare;

namespace {

Decimal read(const char* text) {
    return *Decimal::read(text);
}

}  // namespace

TEST_CASE("a decimal prints back as it was read", "[quantity]") {
    for (const char* text : {"0", "12.50", "-3.25", "0.001", "212.2", "100", "0.00000000001"})
        CHECK(Decimal::read(text)->text() == text);
    for (const char* text :
         {"", "-", ".5", "5.", "1e3", "+1", "1 ", "NaN", "1234567890123", "1.2.3"})
        CHECK_FALSE(Decimal::read(text));
}

TEST_CASE("a double is first written with 12 significant digits", "[quantity]") {
    CHECK(Decimal::fromDouble(2.675).text() == "2.675");
    CHECK(Decimal::fromDouble(0.1 + 0.2).text() == "0.3");
    CHECK(Decimal::fromDouble(-1.0 / 3).text() == "-0.333333333333");
    CHECK(Decimal::fromDouble(123456.5).text() == "123456.5");
    CHECK(Decimal::fromDouble(0).text() == "0");
    CHECK(Decimal::fromDouble(1e-13).text() == "0");
    CHECK(Decimal::fromDouble(98765432109.0).text() == "98765432109");
}

TEST_CASE("ties go up on the exact decimal, whatever the binary value is", "[quantity]") {
    // 2.675 and 1.005 lie below the midpoint as doubles.
    CHECK(roundedToStep(Decimal::fromDouble(2.675), read("0.01")).text() == "2.68");
    CHECK(roundedToStep(Decimal::fromDouble(1.005), read("0.01")).text() == "1.01");
    CHECK(roundedToStep(Decimal::fromDouble(0.3 * 5), read("1")).text() == "2");
    CHECK(roundedToStep(Decimal::fromDouble(-2.5), read("1")).text() == "-3");
    CHECK(roundedToStep(read("2.5"), read("1"), Ties::ToEven).text() == "2");
    CHECK(roundedToStep(read("3.5"), read("1"), Ties::ToEven).text() == "4");
    CHECK(roundedToStep(read("2.5"), read("1"), Ties::Down).text() == "2");
    CHECK(roundedToStep(read("47.4"), read("5")).text() == "45");
    CHECK(roundedToStep(read("47.5"), read("5")).text() == "50");
}

TEST_CASE("a decimal's value is the double nearest to its text", "[quantity]") {
    // The standard library's own reader of decimals, correctly rounded, is the judge.
    std::mt19937_64 random{11};
    for (int i = 0; i < 20000; ++i) {
        const auto size = static_cast<std::int64_t>(random() >> (random() % 63 + 1));
        const int exponent = static_cast<int>(random() % 53) - 26;
        const std::string written = std::to_string(size) + "e" + std::to_string(exponent);
        double nearest = 0;
        std::from_chars(written.data(), written.data() + written.size(), nearest);
        CAPTURE(written);
        REQUIRE(Decimal{size, exponent}.value() == nearest);
        REQUIRE(Decimal{-size, exponent}.value() == -nearest);
    }
}

TEST_CASE("bounds round outward", "[quantity]") {
    CHECK(steppedTo(read("3.14"), read("0.1"), Direction::Floor).text() == "3.1");
    CHECK(steppedTo(read("3.11"), read("0.1"), Direction::Ceiling).text() == "3.2");
    CHECK(steppedTo(read("3.1"), read("0.1"), Direction::Ceiling).text() == "3.1");
    CHECK(steppedTo(read("-3.11"), read("0.1"), Direction::Floor).text() == "-3.2");
}

TEST_CASE("decimals compare and add exactly", "[quantity]") {
    CHECK(read("0.10") == read("0.1"));
    CHECK(read("0.1").plus(read("0.2")) == read("0.3"));
    CHECK(read("271.1").minus(read("212.2")).text() == "58.9");
    CHECK(read("-1") < read("0.001"));
    CHECK(read("1.25").fraction() == Fraction::make(5, 4));
}
