#include "core/quantity/gas_mark.h"

#include <catch2/catch.hpp>

using namespace nettare;

TEST_CASE("from mark 1 on a gas mark is 25 times itself and 250 degrees Fahrenheit", "[quantity]") {
    for (const GasMark& mark : allGasMarks()) {
        if (mark.denominator != 1) continue;
        CAPTURE(mark.numerator);
        CHECK(mark.fahrenheit == 25 * mark.numerator + 250);
    }
    // Below it halves for each 25 °F.
    CHECK(findGasMark(*Fraction::make(1, 2))->fahrenheit == 250);
    CHECK(findGasMark(*Fraction::make(1, 4))->fahrenheit == 225);
    CHECK(allGasMarks().size() == 11);
}

TEST_CASE("a gas mark's exact temperature lies near what dials in Celsius print", "[quantity]") {
    // Published tables (common practice): mark 1/4 is 107.2 °C, printed as 110; 4 is 176.7 as 180.
    CHECK(findGasMark(*Fraction::make(1, 4))->celsius().value() == Approx(107.222).epsilon(1e-5));
    CHECK(findGasMark(Fraction{4})->celsius().value() == Approx(176.667).epsilon(1e-5));
    CHECK(findGasMark(Fraction{9})->celsius().value() == Approx(246.111).epsilon(1e-5));
    for (const GasMark& mark : allGasMarks()) {
        CAPTURE(mark.fahrenheit);
        CHECK(mark.dialLowCelsius - 7 <= mark.celsius().value());
        CHECK(mark.dialHighCelsius + 7 >= mark.celsius().value());
        CHECK(mark.temperature().celsius() == Approx(mark.celsius().value()));
    }
}

TEST_CASE("gas marks are read as cookery books write them", "[quantity]") {
    const std::pair<const char*, Fraction> cases[] = {
        {"gas mark 4", Fraction{4}},
        {"Gas Mark 4", Fraction{4}},
        {"gas 6", Fraction{6}},
        {"Gas 1/2", *Fraction::make(1, 2)},
        {"gas mark ½", *Fraction::make(1, 2)},
        {"gas mark ¼", *Fraction::make(1, 4)},
        {"mark 7", Fraction{7}},
    };
    for (const auto& [text, mark] : cases) {
        CAPTURE(text);
        const auto read = readGasMark(text);
        REQUIRE(read);
        CHECK(read->low->mark() == mark);
        CHECK(read->high == read->low);
    }
    const auto range = readGasMark("gas mark 5–6");
    REQUIRE(range);
    CHECK(range->low->fahrenheit == 375);
    CHECK(range->high->fahrenheit == 400);
    CHECK(range->range().high.fahrenheit() == Approx(400));
}

TEST_CASE("a mark that no oven has is not read", "[quantity]") {
    for (const char* text : {"gas mark 12", "gas mark 0", "gas mark 1/3", "gas mark", "gas 4 oven",
                             "gas mark 3 1/2", "4", "", "gas mark 6-5"}) {
        CAPTURE(text);
        CHECK_FALSE(readGasMark(text));
    }
}
