#include <catch2/catch.hpp>

#include "core/quantity/amount.h"
#include "core/quantity/fraction.h"

#include <limits>
#include <random>

using namespace nettare;

namespace {

constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t kLeast = std::numeric_limits<std::int64_t>::min();

Fraction over(std::int64_t numerator, std::int64_t denominator) {
    return *Fraction::make(numerator, denominator);
}

/// A small fraction of either sign; the generator's own output, so that every library agrees.
Fraction anyFraction(std::mt19937& random) {
    const auto numerator = static_cast<std::int64_t>(random() % 2001) - 1000;
    return over(numerator, static_cast<std::int64_t>(random() % 999) + 1);
}

}  // namespace

TEST_CASE("a fraction stands in lowest terms over a positive denominator", "[quantity]") {
    CHECK(over(2, 4) == over(1, 2));
    CHECK(over(6, 4).numerator() == 3);
    CHECK(over(6, 4).denominator() == 2);
    CHECK(over(1, -2).numerator() == -1);
    CHECK(over(1, -2).denominator() == 2);
    CHECK(over(-3, -9) == over(1, 3));
    CHECK(over(0, -7) == Fraction{});
    CHECK(Fraction{}.denominator() == 1);
    CHECK(over(3, 8).value() == 0.375);
}

TEST_CASE("nothing is divided by zero", "[quantity]") {
    CHECK_FALSE(Fraction::make(1, 0));
    CHECK_FALSE(Fraction::make(0, 0));
    CHECK_FALSE(over(1, 2).dividedBy(Fraction{0}));
    CHECK(Fraction{0}.dividedBy(over(1, 2)) == Fraction{0});
}

TEST_CASE("thirds and sixths of a cup add up without a remainder", "[quantity]") {
    CHECK(over(1, 3).plus(over(1, 6)) == over(1, 2));
    CHECK(over(1, 3).plus(over(2, 3)) == Fraction{1});
    CHECK(over(3, 4).times(over(2, 3)) == over(1, 2));
    CHECK(over(3, 4).dividedBy(over(3, 8)) == Fraction{2});
    CHECK(over(1, 2).plus(over(-1, 2)) == Fraction{0});
    CHECK(over(1, 2).dividedBy(over(-1, 4)) == Fraction{-2});
}

TEST_CASE("what does not fit 64 bits is nothing, never a wrapped number", "[quantity]") {
    CHECK_FALSE(Fraction{kMost}.plus(Fraction{1}));
    CHECK_FALSE(Fraction{kMost}.times(Fraction{2}));
    CHECK_FALSE(Fraction{kLeast}.times(Fraction{-1}));
    CHECK_FALSE(over(1, kMost).times(over(1, 2)));
    CHECK_FALSE(over(1, kMost).dividedBy(Fraction{2}));
    CHECK_FALSE(Fraction::make(kLeast, -1));
    CHECK(Fraction{kMost}.times(over(1, kMost)) == Fraction{1});
    CHECK(Fraction{kMost}.plus(Fraction{-1}) == Fraction{kMost - 1});
    CHECK(over(kMost, 2).times(Fraction{2}) == Fraction{kMost});
    CHECK(over(kLeast, 2).numerator() == kLeast / 2);
}

TEST_CASE("fractions are ordered by value, the largest ones too", "[quantity]") {
    CHECK(over(1, 3) < over(1, 2));
    CHECK(over(-1, 2) < over(-1, 3));
    CHECK(over(2, 3) > over(5, 8));
    CHECK(over(kMost - 1, kMost) < Fraction{1});
    CHECK(over(kMost, kMost - 1) > Fraction{1});
    CHECK((over(2, 4) <=> over(1, 2)) == std::strong_ordering::equal);
}

TEST_CASE("adding and multiplying fractions follows the laws of arithmetic", "[quantity]") {
    std::mt19937 random{20261125};
    for (int i = 0; i < 300; ++i) {
        const Fraction a = anyFraction(random);
        const Fraction b = anyFraction(random);
        const Fraction c = anyFraction(random);
        CAPTURE(i, writeFraction(a), writeFraction(b), writeFraction(c));
        CHECK(a.plus(b) == b.plus(a));
        CHECK(a.times(b) == b.times(a));
        CHECK(a.plus(b)->plus(c) == a.plus(*b.plus(c)));
        CHECK(a.plus(b)->times(c) == a.times(c)->plus(*b.times(c)));
        if (b != Fraction{0}) {
            CHECK(a.dividedBy(b)->times(b) == a);
        }
        CHECK((a < b) == (a.value() < b.value()));
    }
}

TEST_CASE("a fraction is written as cooks write it", "[quantity]") {
    CHECK(writeFraction(over(3, 2)) == "1 1/2");
    CHECK(writeFraction(over(3, 4)) == "3/4");
    CHECK(writeFraction(over(8, 4)) == "2");
    CHECK(writeFraction(Fraction{0}) == "0");
}
