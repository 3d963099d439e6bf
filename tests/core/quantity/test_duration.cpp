#include "core/quantity/duration.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

struct GoodTime {
    const char* text;
    double low_min, high_min;
};

}  // namespace

TEST_CASE("times are read as kitchens write them", "[quantity]") {
    // SI Brochure, 9th edition, table 8: min = 60 s, h = 60 min, d = 24 h.
    const GoodTime cases[] = {
        {"6 min", 6, 6},
        {"6min", 6, 6},
        {"6 minutes", 6, 6},
        {"1 h 30 min", 90, 90},
        {"1h30", 90, 90},
        {"1 hour and 10 minutes", 70, 70},
        {"1 hr, 5 mins", 65, 65},
        {"1 1/2 hours", 90, 90},
        {"1½ hours", 90, 90},
        {"2 hrs. 5 mins.", 125, 125},
        {"2 hours 5", 125, 125},
        {"1-1/2 hours", 90, 90},
        {"2.5 h", 150, 150},
        {"an hour", 60, 60},
        {"half an hour", 30, 30},
        {"a quarter of an hour", 15, 15},
        {"three quarters of an hour", 45, 45},
        {"a minute", 1, 1},
        {"30 s", 0.5, 0.5},
        {"90 seconds", 1.5, 1.5},
        {"2 days", 2880, 2880},
        {"25-30 minutes", 25, 30},
        {"25–30 min", 25, 30},
        {"25 to 30 minutes", 25, 30},
        {"1-1 1/2 hours", 60, 90},
        {"1 to 1½ hours", 60, 90},
        {"30 min to 1 hour", 30, 60},
        {"half an hour to an hour", 30, 60},
        {"1 h to 1 h 30 min", 60, 90},
        {"5-minute", 5, 5},
        {"1 d 2 h 3 min 6 s", 1563.1, 1563.1},
    };
    for (const GoodTime& c : cases) {
        CAPTURE(c.text);
        const auto read = readDuration(c.text);
        REQUIRE(read);
        CHECK(read->low.minutes() == Approx(c.low_min).epsilon(1e-14));
        CHECK(read->high.minutes() == Approx(c.high_min).epsilon(1e-14));
        CHECK_FALSE(read->about);
    }
}

TEST_CASE("about a time is an interval of a tenth to either side", "[quantity]") {
    const auto read = readDuration("about 20 min");
    REQUIRE(read);
    CHECK(read->about);
    CHECK(read->seconds().low == Approx(18 * 60));
    CHECK(read->seconds().high == Approx(22 * 60));
}

TEST_CASE("what is no time is not read as one", "[quantity]") {
    for (const char* text :
         {"", "6", "min", "6 minced", "0 min", "30-25 min", "30 min 1 h", "1 h 2 h", "an inch",
          "half", "6 min more", "6 min to", "180 °C", "6 to", "1 h 30 30", "a"}) {
        CAPTURE(text);
        CHECK_FALSE(readDuration(text));
    }
}
