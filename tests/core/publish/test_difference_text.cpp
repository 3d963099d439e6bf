#include "core/publish/difference_text.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

std::string written(int decimals, double before, double after) {
    const DifferenceText text = differenceText(decimals, before, after);
    return text.before + " " + text.after + " " + text.difference;
}

}  // namespace

TEST_CASE("a difference agrees with the ends beside it", "[publish]") {
    CHECK(written(0, 174, 144) == "174 144 −30");
    CHECK(written(0, 58.4, 61.4) == "58 61 +3");
    // 58 and 61 would be 3 apart, the difference is 2.2.
    CHECK(written(0, 58.4, 60.6) == "58.4 60.6 +2.2");
    CHECK(written(1, 5, 5) == "5.0 5.0 0.0");
    CHECK(written(0, 0.2, 0.4) == "0 0 0");
}

TEST_CASE("where no digits agree the difference is that of what is written", "[publish]") {
    const DifferenceText text = differenceText(0, 1.0 / 3, 4.0 / 9 + 1);
    CHECK(text.before + " " + text.after + " " + text.difference == "0 1 +1");
    CHECK(written(0, 0.44445, 1.0).find('+') != std::string::npos);
}
