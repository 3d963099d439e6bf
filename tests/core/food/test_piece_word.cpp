#include "core/food/piece_word.h"

#include <catch2/catch.hpp>

using namespace nettare;

TEST_CASE("the words for one piece and for several agree", "[food]") {
    const std::pair<const char*, const char*> words[] = {
        {"bulb", "bulbs"},          {"clove", "cloves"},    {"leaf", "leaves"},
        {"bay leaf", "bay leaves"}, {"potato", "potatoes"}, {"large egg", "large eggs"},
        {"berry", "berries"},       {"cookie", "cookies"},  {"bunch", "bunches"},
        {"box", "boxes"},           {"radish", "radishes"}, {"slice", "slices"},
        {"olive", "olives"},        {"half", "halves"},     {"stalk", "stalks"},
        {"peach", "peaches"},       {"tray", "trays"},      {"glass", "glasses"},
        {"crêpe", "crêpes"},
    };
    for (const auto& [one, several] : words) {
        CHECK(pluralOf(one) == several);
        CHECK(singularOf(several) == one);
        CHECK(singularOf(one) == one);
        CHECK(pluralOf(several) == several);
        CHECK(samePiece(one, several));
    }
    CHECK_FALSE(samePiece("bulb", "clove"));
    CHECK(singularOf("asparagus") == "asparagus");
    CHECK(singularOf("").empty());
    CHECK(pluralOf("").empty());
}
