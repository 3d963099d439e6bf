#include <catch2/catch.hpp>

#include "core/label/print_rule.h"

#include <array>

using namespace nettare;

namespace {

Decimal amountOf(const char* text) {
    return *Decimal::read(text);
}

/// Below 2 prints 0, 1 to 5 may print "less than 5", from 4 to the nearest 2.
constexpr std::array kSampleRule{
    PrintBand{PrintKind::Zero, {0, 0}, {0, 0}, true, Decimal{2, 0}, false},
    PrintBand{PrintKind::LessThan, {5, 0}, {1, 0}, false, Decimal{5, 0}, true},
    PrintBand{PrintKind::Nearest, {2, 0}, {4, 0}, true, std::nullopt, false},
};

std::string sampleText(const char* amount) {
    const auto printed = printedUnder(kSampleRule, amountOf(amount));
    return printed ? printed->text() : "nothing";
}

}  // namespace

TEST_CASE("the first band that holds an amount says what is printed", "[label]") {
    CHECK(sampleText("0") == "0");
    CHECK(sampleText("1.99") == "0");
    CHECK(sampleText("2") == "less than 5");
    CHECK(sampleText("5") == "less than 5");
    CHECK(sampleText("5.01") == "6");
    CHECK(sampleText("7") == "8");
    CHECK(sampleText("-0.1") == "nothing");
}

TEST_CASE("the amounts behind a print are those of all bands together", "[label]") {
    const auto zero = amountsPrintedAs(kSampleRule, PrintedAmount{false, amountOf("0")});
    REQUIRE(zero);
    CHECK(zero->contains(amountOf("0")));
    CHECK_FALSE(zero->contains(amountOf("2")));
    const auto less = amountsPrintedAs(kSampleRule, PrintedAmount{true, amountOf("5")});
    REQUIRE(less);
    CHECK_FALSE(less->contains(amountOf("1")));
    CHECK(less->contains(amountOf("5")));
    const auto four = amountsPrintedAs(kSampleRule, PrintedAmount{false, amountOf("4")});
    REQUIRE(four);
    CHECK(four->low == amountOf("4"));
    CHECK(four->high == amountOf("5"));
    CHECK_FALSE(amountsPrintedAs(kSampleRule, PrintedAmount{false, amountOf("2")}));
    CHECK_FALSE(amountsPrintedAs(kSampleRule, PrintedAmount{false, amountOf("5")}));
    CHECK_FALSE(amountsPrintedAs(kSampleRule, PrintedAmount{true, amountOf("4")}));
}

TEST_CASE("zeros at the end of decimals are dropped, those of whole numbers stay", "[label]") {
    CHECK(PrintedAmount{false, amountOf("2.0")}.text() == "2");
    CHECK(PrintedAmount{false, amountOf("2.50")}.text() == "2.5");
    CHECK(PrintedAmount{false, amountOf("0.00")}.text() == "0");
    CHECK(PrintedAmount{true, amountOf("1.0")}.text() == "less than 1");
    CHECK(withoutTrailingZeros(amountOf("120")).text() == "120");
}

TEST_CASE("half a unit around a figure never goes below zero", "[label]") {
    CHECK(halfUnitAround(amountOf("14"), amountOf("1")).low == amountOf("13.5"));
    CHECK(halfUnitAround(amountOf("14"), amountOf("1")).high == amountOf("14.5"));
    CHECK(halfUnitAround(amountOf("0"), amountOf("10")).low == amountOf("0"));
    CHECK(halfUnitAround(amountOf("0"), amountOf("10")).high == amountOf("5"));
}
