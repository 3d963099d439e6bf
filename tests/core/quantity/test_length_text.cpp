#include "core/quantity/length_text.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

struct GoodLength {
    const char* text;
    double low_mm, high_mm;
    const char* dimension = "";
};

}  // namespace

TEST_CASE("lengths are read as kitchens write them", "[quantity]") {
    // NIST SP 811, B.8: 1 inch = 25.4 mm exactly.
    const GoodLength cases[] = {
        {"7 cm", 70, 70},
        {"5mm", 5, 5},
        {"2-inch", 50.8, 50.8},
        {"2\"", 50.8, 50.8},
        {"2″", 50.8, 50.8},
        {"1 1/2 in.", 38.1, 38.1},
        {"½ inch", 12.7, 12.7},
        {"1/2 inch thick", 12.7, 12.7, "thick"},
        {"1/2-inch", 12.7, 12.7},
        {"7-8 cm", 70, 80},
        {"7 to 8 cm across", 70, 80, "across"},
        {"7 cm to 8 cm", 70, 80},
        {"1-2 inches long", 25.4, 50.8, "long"},
        {"23 cm in diameter", 230, 230, "in diameter"},
        {"2,5 cm", 25, 25},
        {"3 millimetres", 3, 3},
        {"2-3-inch", 50.8, 76.2},
        {"1-1/2 inch", 38.1, 38.1},
    };
    for (const GoodLength& c : cases) {
        CAPTURE(c.text);
        const auto read = readLength(c.text);
        REQUIRE(read);
        CHECK(read->low.millimetres() == Approx(c.low_mm).epsilon(1e-14));
        CHECK(read->high.millimetres() == Approx(c.high_mm).epsilon(1e-14));
        CHECK(read->dimension == c.dimension);
        CHECK_FALSE(read->about);
        CHECK(read->millimetres() == Interval{read->low.millimetres(), read->high.millimetres()});
    }
}

TEST_CASE("about a length is an interval of a tenth to either side", "[quantity]") {
    for (const char* text :
         {"about 7 cm across", "~7 cm across", "approx. 7 cm across", "c. 7 cm across"}) {
        CAPTURE(text);
        const auto read = readLength(text);
        REQUIRE(read);
        CHECK(read->about);
        CHECK(read->dimension == "across");
        CHECK(read->millimetres().low == Approx(63));
        CHECK(read->millimetres().high == Approx(77));
    }
}

TEST_CASE("what is no length is not read as one", "[quantity]") {
    for (const char* text : {"", "7", "cm", "7 cmx", "0 cm", "8-7 cm", "7 cm beetroot",
                             "2 inkwells", "7 min", "-7 cm", "7 cm to", "9 cm - 8 cm"}) {
        CAPTURE(text);
        CHECK_FALSE(readLength(text));
    }
}
