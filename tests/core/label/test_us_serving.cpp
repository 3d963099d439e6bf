#include <catch2/catch.hpp>

#include "core/label/us_serving.h"

#include "label_cases.h"

#include <limits>

using namespace nettare;

namespace {

std::string metricText(double grams) {
    return usServingMetricText(grams).value();
}

}  // namespace

TEST_CASE("the number of servings prints as the published cases", "[label]") {
    for (const LabelCase& row : labelCases("us_servings")) {
        CAPTURE(row.id, row.source);
        std::string text = usServingsText(row.number("servings")).value();
        REQUIRE(text.starts_with("about "));
        CHECK(row.accepts(text.substr(6)));
    }
}

TEST_CASE("servings are about a number only where rounding changed them", "[label]") {
    CHECK(usServingsText(4).value() == "4");
    CHECK(usServingsText(2.5).value() == "2.5");
    CHECK(usServingsText(0.1 * 30).value() == "3");
    CHECK(usServingsText(10.0 / 3).value() == "about 3.5");
    CHECK(usServingsText(5.5).value() == "about 6");
    CHECK(usServingsText(1.9).value() == "about 2");
}

TEST_CASE("serving grams are whole from 5, halves from 2, tenths below", "[label]") {
    // 21 CFR 101.9(b)(7); the steps below 5 are from memory.
    CHECK(metricText(55.4) == "55");
    CHECK(metricText(55.5) == "56");
    CHECK(metricText(5.4) == "5");
    CHECK(metricText(4.74) == "4.5");
    CHECK(metricText(4.75) == "5");
    CHECK(metricText(2.2) == "2");
    CHECK(metricText(1.96) == "2");
    CHECK(metricText(1.94) == "1.9");
    CHECK(metricText(0.05) == "0.1");
}

TEST_CASE("a serving of nothing is refused", "[label]") {
    CHECK(usServingMetricText(0).error().code == ErrorCode::NotPositive);
    CHECK(usServingMetricText(-5).error().code == ErrorCode::NotPositive);
    CHECK(usServingMetricText(0.04).error().code == ErrorCode::NotPositive);
    CHECK(usServingsText(0.4).error().code == ErrorCode::NotPositive);
    CHECK(usServingsText(0).error().value("found") == "0");
    CHECK(usServingsText(std::numeric_limits<double>::quiet_NaN()).error().code ==
          ErrorCode::OutOfRange);
    CHECK(usServingsText(1e10).error().code == ErrorCode::OutOfRange);
}
