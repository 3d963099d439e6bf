#include "core/label/read_printed.h"

#include <catch2/catch.hpp>

#include "core/label/label_interval.h"
#include "core/label/label_values.h"

#include "label_examples.h"

namespace nettare {

namespace {

/// Empty where the text is no amount.
std::string figureOf(std::string_view printed, std::string_view unit) {
    const auto read = readPrinted(printed, unit);
    return read ? read->figure.text() : "";
}

}  // namespace

TEST_CASE("a comma is the decimal mark of packages that print it so", "[label]") {
    CHECK(figureOf("0,5 g", "g") == "0.5");
    CHECK(figureOf("12,5", "g") == "12.5");
    CHECK(figureOf("0,45 mg", "mg") == "0.45");
    CHECK(figureOf("<0,5 g", "g") == "0.5");
    CHECK(readPrinted("<0,5 g", "g")->lessThan);
    CHECK(figureOf("less than 0,01", "g") == "0.01");
    // No food has 1125 g of salt; nothing has a group that begins with 0.
    CHECK(figureOf("1,125 g", "g") == "1.125");
    CHECK(figureOf("0,125", "µg") == "0.125");
    CHECK(figureOf("1,2345", "mg") == "1.2345");
}

TEST_CASE("before three digits of another unit than grams a comma parts thousands", "[label]") {
    CHECK(figureOf("1,125 kJ", "kJ") == "1125");
    CHECK(figureOf("1,200 mg", "mg") == "1200");
    CHECK(figureOf("1,200.5", "mg") == "1200.5");
    CHECK(figureOf("1,234,567", "mg") == "1234567");
    for (const char* none : {",5", "5,", "1,,5", "1,5,5", "1.5,5", "1,5.5", ","}) {
        INFO(none);
        CHECK(figureOf(none, "g").empty());
    }
}

TEST_CASE("spaces and high commas part thousands as packages print them", "[label]") {
    for (const char* printed :
         {"1 567", "1\u00a0567", "1\u2009567", "1\u202f567 kJ", "1'567", "1\u2019567 kJ"}) {
        INFO(printed);
        CHECK(figureOf(printed, "kJ") == "1567");
    }
    CHECK(figureOf("12 345 678", "mg") == "12345678");
    CHECK(figureOf("1 567,5", "mg") == "1567.5");
    CHECK(figureOf("<1 000", "mg") == "1000");
    for (const char* none : {"1 56", "1 5678", "0 567", "1234 567", "1 567 8", "1' 567", "1'",
                             "1 5", "1 567,500", "12 g 5"}) {
        INFO(none);
        CHECK(figureOf(none, "mg").empty());
    }
}

TEST_CASE("an amount is read whatever space, point or micro sign a package uses", "[label]") {
    for (const char* printed : {"less than 1 g", "less  than 1  g", "less\u00a0than\u00a01\u00a0g",
                                "Contains  less than 1 g", "<\u202f1 g"}) {
        INFO(printed);
        const auto read = readPrinted(printed, "g");
        REQUIRE(read);
        CHECK(read->lessThan);
        CHECK(read->figure == Decimal{1, 0});
    }
    CHECK(figureOf(".5", "g") == "0.5");
    CHECK(readPrinted("<.5 g", "g") == PrintedAmount{true, Decimal{5, -1}});
    for (const char* printed : {"10 \u00b5g", "10 \u03bcg", "10 ug", "10 mcg", "10\u00a0\u03bcg"}) {
        INFO(printed);
        CHECK(figureOf(printed, "µg") == "10");
    }
    for (const char* none : {"trace", "traces", ".", "g", "5 ug g", "-.5", ".5.5"}) {
        INFO(none);
        CHECK(figureOf(none, "g").empty());
    }
}

TEST_CASE("a figure with a decimal comma stands for what it does with a point", "[label]") {
    const LabelLine salt = LabelOnly::NACL;
    for (const char* printed : {"0,5", "1,25", "12,0", "1,125"}) {
        INFO(printed);
        std::string point = printed;
        point[point.find(',')] = '.';
        const auto comma = printedInterval(LabelRules::Eu, salt, printed);
        const auto same = printedInterval(LabelRules::Eu, salt, point);
        REQUIRE(comma);
        REQUIRE(same);
        CHECK(comma->low == same->low);
        CHECK(comma->high == same->high);
        CHECK(printedFigure({salt, printed}, *comma) == printedFigure({salt, point}, *same));
    }
    const auto values = labelValues(withLine(euBiscuit(), Component::FAT, "16,0"));
    REQUIRE(values);
    CHECK(checkLabel(withLine(euBiscuit(), Component::FAT, "16,0")).empty());
}

TEST_CASE("a slip in a figure with a decimal comma is put right with one", "[label]") {
    const LabelFacts label = withLine(euBiscuit(), LabelOnly::CHOAVL, "6,6");
    const auto findings = checkLabel(label);
    REQUIRE_FALSE(findings.empty());
    REQUIRE(findings.front().slip);
    CHECK(findings.front().slip->instead == "66");
    const auto sugars = checkLabel(withLine(euBiscuit(), Component::PROCNT, "57,5"));
    REQUIRE_FALSE(sugars.empty());
    REQUIRE(sugars.front().slip);
    const std::string instead = sugars.front().slip->instead;
    INFO(instead);
    CHECK(instead.find('.') == std::string::npos);
    CHECK(readPrinted(instead, "g"));
}

}  // namespace nettare
