#include "core/publish/enough_text.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

EnoughWeighings answer(Enough enough, double room, double least = 0, int more = 0) {
    EnoughWeighings made;
    made.target = {Component::ENERC_KCAL, Basis::Portion, Decimal{150, 0}, {}};
    made.enough = enough;
    made.room = room;
    made.least = least;
    made.more = more;
    made.tried = kMostMore;
    return made;
}

std::string textOf(const EnoughWeighings& said) {
    Recipe recipe;
    recipe.title = "Skewers";
    return enoughText(said, recipe);
}

}  // namespace

TEST_CASE("how many more weighings a ceiling asks for is a sentence", "[publish]") {
    const std::string of = "For “Skewers”, at most 150 kcal energy per portion: ";
    CHECK(textOf(answer(Enough::Already, 9)) == of + "what is weighed is enough.");
    CHECK(textOf(answer(Enough::WithMore, 9, 3, 1)) == of + "one more weighing is enough.");
    CHECK(textOf(answer(Enough::WithMore, 9, 3, 6)) == of + "6 more weighings are enough.");
    CHECK(textOf(answer(Enough::ValueMisses, -2.2)) ==
          of + "the value itself is 3 kcal above; no weighing mends that.");
}

TEST_CASE("what would stay and what is left never look alike", "[publish]") {
    const std::string of =
        "For “Skewers”, at most 150 kcal energy per portion: even 1000 more are not enough; ";
    CHECK(textOf(answer(Enough::NoneSuffices, 9.7, 14.2)) ==
          of + "± 15 kcal would stay, and 9 are left.");
    CHECK(textOf(answer(Enough::NoneSuffices, 9.12, 9.18)) ==
          of + "± 9.2 kcal would stay, and 9.1 are left.");
}

TEST_CASE("a floor is missed from below", "[publish]") {
    EnoughWeighings floor = answer(Enough::ValueMisses, -0.4);
    floor.target = {Component::PROCNT, Basis::Piece, {}, Decimal{12, 0}};
    CHECK_THAT(textOf(floor), Catch::Contains("at least 12 g protein per piece") &&
                                  Catch::Contains("0.4 g below"));
}
