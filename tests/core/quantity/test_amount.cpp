#include <catch2/catch.hpp>

#include "core/quantity/amount.h"

using namespace nettare;

namespace {

struct Good {
    const char* text;
    const char* low;
    const char* high;
};

}  // namespace

TEST_CASE("amounts are read exactly and kept as typed", "[quantity]") {
    const Good cases[] = {
        {"1/4", "1/4", "1/4"},
        {"1 1/2", "1 1/2", "1 1/2"},
        {"½", "1/2", "1/2"},
        {"1½", "1 1/2", "1 1/2"},
        {"1 ½", "1 1/2", "1 1/2"},
        {"2-3", "2", "3"},
        {"2–3", "2", "3"},
        {"2 - 3", "2", "3"},
        {"1,5", "1 1/2", "1 1/2"},
        {"1.5", "1 1/2", "1 1/2"},
        {"0.125", "1/8", "1/8"},
        {"0,125", "1/8", "1/8"},
        {"12", "12", "12"},
        {"36", "36", "36"},
        {"1.25", "1 1/4", "1 1/4"},
        {"⅔", "2/3", "2/3"},
        {"1/2-3/4", "1/2", "3/4"},
        {"1234.5", "1234 1/2", "1234 1/2"},
        {"1.5000", "1 1/2", "1 1/2"},
    };
    for (const Good& c : cases) {
        CAPTURE(c.text);
        const auto amount = readAmount(c.text);
        REQUIRE(amount);
        CHECK(writeFraction(amount->low()) == c.low);
        CHECK(writeFraction(amount->high()) == c.high);
        CHECK(amount->text() == c.text);
    }
}

TEST_CASE("a mark that could group thousands is refused with both readings", "[quantity]") {
    for (const char* text : {"1,500", "12.500", "1.500", "999,000", "1-1,500"}) {
        CAPTURE(text);
        const auto amount = readAmount(text);
        REQUIRE_FALSE(amount);
        CHECK(amount.error().code == ErrorCode::AmountAmbiguous);
    }
    const Error error = readAmount("1,500").error();
    CHECK(error.value("decimal") == "1.500");
    CHECK(error.value("grouped") == "1500");
    CHECK(readAmount("1,500", GroupMark::Comma)->low() == Fraction{1500});
    CHECK(readAmount("1,500", GroupMark::Point)->low() == *Fraction::make(3, 2));
    CHECK(readAmount("1.500", GroupMark::Point)->low() == Fraction{1500});
}

TEST_CASE("what is no positive amount is refused by its reason", "[quantity]") {
    const std::pair<const char*, ErrorCode> cases[] = {
        {"", ErrorCode::EmptyText},           {"some", ErrorCode::NotAnAmount},
        {"1/0", ErrorCode::NotAnAmount},      {"1/2/3", ErrorCode::NotAnAmount},
        {"1.2.3", ErrorCode::NotAnAmount},    {"NaN", ErrorCode::NotAnAmount},
        {"1e3", ErrorCode::NotAnAmount},      {".5", ErrorCode::NotAnAmount},
        {"1 3/2", ErrorCode::NotAnAmount},    {"2-", ErrorCode::NotAnAmount},
        {"-2", ErrorCode::AmountNotPositive}, {"−2", ErrorCode::AmountNotPositive},
        {"0", ErrorCode::AmountNotPositive},  {"0/3", ErrorCode::AmountNotPositive},
        {"3-2", ErrorCode::RangeReversed},    {"12345678901", ErrorCode::AmountTooLong},
    };
    for (const auto& [text, code] : cases) {
        CAPTURE(text);
        const auto amount = readAmount(text);
        REQUIRE_FALSE(amount);
        CHECK(amount.error().code == code);
        if (code == ErrorCode::NotAnAmount) CHECK(amount.error().value("found") == text);
    }
}
