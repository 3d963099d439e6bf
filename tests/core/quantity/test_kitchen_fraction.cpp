#include "core/quantity/kitchen_fraction.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/quantity/amount.h"
#include "core/quantity/fraction_sign.h"

using namespace nettare;

namespace {

constexpr KitchenTool kTools[] = {KitchenTool::Any, KitchenTool::Cup, KitchenTool::Tablespoon,
                                  KitchenTool::Teaspoon};

std::string near(double value, KitchenTool tool = KitchenTool::Any) {
    const auto nearest = kitchenFraction(value, tool);
    REQUIRE(nearest);
    return nearest->text();
}

/// From a thousandth to some thousands, all magnitudes alike.
double anyValue(std::mt19937& random) {
    const double unit = static_cast<double>(random()) / 4294967296.0;
    return std::pow(10.0, -3 + 6.5 * unit);
}

}  // namespace

TEST_CASE("a computed amount becomes the nearest one that a cook can measure", "[quantity]") {
    using enum KitchenTool;
    CHECK(near(0.34) == "1/3");
    CHECK(near(0.6666666) == "2/3");
    CHECK(near(0.13) == "1/8");
    CHECK(near(0.9) == "7/8");
    CHECK(near(1.9) == "2");
    CHECK(near(2.3) == "2 1/3");
    CHECK(near(4.3) == "4 1/2");
    CHECK(near(11.4) == "11");
    CHECK(near(0.13, Cup) == "1/4");
    CHECK(near(0.37, Cup) == "1/3");
    CHECK(near(0.1, Tablespoon) == "1/2");
    CHECK(near(2.6, Tablespoon) == "2 1/2");
    CHECK(near(0.3, Teaspoon) == "1/4");
    CHECK(near(1.3, Teaspoon) == "1 1/4");
}

TEST_CASE("below an eighth of a teaspoon there is nothing finer, and the error says so",
          "[quantity]") {
    const auto nearest = kitchenFraction(0.05, KitchenTool::Teaspoon);
    REQUIRE(nearest);
    CHECK(nearest->text() == "1/8");
    CHECK(nearest->relativeError == Approx(1.5));
}

TEST_CASE("halfway between two amounts goes up", "[quantity]") {
    CHECK(kitchenFraction(*Fraction::make(1, 16), KitchenTool::Any)->text() == "1/8");
    CHECK(kitchenFraction(*Fraction::make(7, 24), KitchenTool::Cup)->text() == "1/3");
    CHECK(kitchenFraction(*Fraction::make(21, 2), KitchenTool::Any)->text() == "11");
    CHECK(kitchenFraction(0.625, KitchenTool::Teaspoon)->text() == "3/4");
}

TEST_CASE("an amount that can be measured has no error", "[quantity]") {
    for (const KitchenTool tool : kTools)
        for (const int denominator : {2, 3, 4, 8})
            for (int numerator = 1; numerator <= 40 * denominator; ++numerator) {
                const Fraction value = *Fraction::make(numerator, denominator);
                const auto nearest = kitchenFraction(value, tool);
                REQUIRE(nearest);
                const bool same = nearest->amount == value;
                CAPTURE(numerator, denominator, nearest->text());
                CHECK((nearest->relativeError == 0) == same);
                const auto asDouble = kitchenFraction(value.value(), tool);
                CHECK(asDouble->amount == nearest->amount);
                CHECK((asDouble->relativeError == 0) == same);
            }
}

TEST_CASE("the error stated is the error made, and none of its neighbours is nearer",
          "[quantity]") {
    std::mt19937 random{26112026};
    for (int i = 0; i < 20000; ++i) {
        const double value = anyValue(random);
        const KitchenTool tool = kTools[random() % std::size(kTools)];
        const auto nearest = kitchenFraction(value, tool);
        REQUIRE(nearest);
        CAPTURE(value, nearest->text());
        CHECK(value * (1 + nearest->relativeError) ==
              Approx(nearest->amount.value()).epsilon(1e-12));
        const auto below = kitchenFractionBelow(value, tool);
        if (below)
            CHECK(std::fabs(nearest->amount.value() - value) <=
                  std::fabs(below->value() - value) * (1 + 1e-9) + 1e-15);
        if (value >= 1) CHECK(std::fabs(nearest->relativeError) < 0.26);
        if (value >= 4) CHECK(std::fabs(nearest->relativeError) < 0.07);
    }
}

TEST_CASE("what is written reads back as the same amount, in digits and in signs", "[quantity]") {
    std::mt19937 random{7};
    for (int i = 0; i < 5000; ++i) {
        const auto nearest = kitchenFraction(anyValue(random), kTools[random() % 4]);
        REQUIRE(nearest);
        for (const std::string& text : {nearest->text(), nearest->signText()}) {
            CAPTURE(text);
            const auto read = readAmount(text);
            REQUIRE(read);
            CHECK(read->low() == nearest->amount);
            CHECK_FALSE(read->isRange());
        }
    }
}

TEST_CASE("fractions are printed with their own signs where there are any", "[quantity]") {
    CHECK(writeFractionSign(*Fraction::make(3, 2)) == "1½");
    CHECK(writeFractionSign(*Fraction::make(2, 3)) == "⅔");
    CHECK(writeFractionSign(Fraction{12}) == "12");
    CHECK(writeFractionSign(*Fraction::make(5, 16)) == "5/16");
    for (const FractionSign& sign : fractionSigns())
        CHECK(writeFractionSign(sign.value()) == sign.sign);
}

TEST_CASE("nothing, less than nothing and too much cannot be measured", "[quantity]") {
    for (const double value : {0.0, -1.0, 2e9, std::nan(""), HUGE_VAL, 1e-13})
        CHECK_FALSE(kitchenFraction(value, KitchenTool::Any));
    CHECK_FALSE(kitchenFraction(Fraction{0}, KitchenTool::Cup));
    CHECK_FALSE(kitchenFraction(*Fraction::make(-1, 2), KitchenTool::Cup));
    CHECK_FALSE(kitchenFractionBelow(0.1, KitchenTool::Cup));
    CHECK(kitchenFractionBelow(0.3, KitchenTool::Cup) == Fraction::make(1, 4));
}
