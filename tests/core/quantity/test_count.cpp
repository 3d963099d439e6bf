#include "core/quantity/count.h"

#include <catch2/catch.hpp>

using namespace nettare;

TEST_CASE("a count is exact and more than nothing", "[quantity]") {
    CHECK(Count{}.exact() == Fraction{1});
    const auto half = Count::from(*Fraction::make(1, 2));
    REQUIRE(half);
    CHECK(half->value() == 0.5);
    CHECK(half->isAtMostOne());
    CHECK_FALSE(Count::from(Fraction{0}));
    CHECK_FALSE(Count::from(*Fraction::make(-1, 2)));
}

TEST_CASE("pieces divide into portions", "[quantity]") {
    CHECK(*Count::from(Fraction{10}) / *Count::from(Fraction{2}) == 5);
    CHECK(*Count::from(Fraction{10}) > *Count::from(Fraction{2}));
    CHECK_FALSE(Count::from(Fraction{2})->isAtMostOne());
}
