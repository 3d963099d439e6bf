#include <catch2/catch.hpp>

#include "db/match_quality.h"

using namespace nettare;

TEST_CASE("what is asked for comes before what only mentions it", "[search]") {
    const std::vector<std::string> butter{"butter"};
    CHECK(matchQuality(butter, "butter, salted", {}) == MatchQuality::Named);
    CHECK(matchQuality(butter, "peanut butter, smooth, unsalted", {}) == MatchQuality::Named);
    CHECK(matchQuality(butter, "butter lettuce", {}) == MatchQuality::Whole);
    CHECK(matchQuality(butter, "butternut squash, raw", {}) == MatchQuality::Start);
}

TEST_CASE("the head word of a name stands before in, with, bracket and comma", "[search]") {
    CHECK(matchQuality({"tomatoes"}, "canned tomatoes in juice", {}) == MatchQuality::Named);
    CHECK(matchQuality({"juice"}, "canned tomatoes in juice", {}) == MatchQuality::Whole);
    CHECK(matchQuality({"steak"}, "strip steak, raw", {"sirloin steak (UK)"}) ==
          MatchQuality::Named);
    CHECK(matchQuality({"sauerkraut"}, "sauerkraut with its liquid, canned", {}) ==
          MatchQuality::Named);
}

TEST_CASE("another name names the food as well as its own", "[search]") {
    CHECK(matchQuality({"prawn"}, "shrimp, raw", {"prawns"}) == MatchQuality::Named);
    CHECK(matchQuality({"raw", "prawn"}, "shrimp, raw", {"prawns"}) == MatchQuality::Whole);
    CHECK(matchQuality({"praw"}, "shrimp, raw", {"prawns"}) == MatchQuality::Start);
}
