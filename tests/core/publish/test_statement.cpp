#include "core/publish/statement.h"

#include <catch2/catch.hpp>

#include "skewers.h"

using namespace nettare;
using enum nettare::Component;
using skewers::counted;

namespace {

std::string stated(const Figure& figure, const std::vector<Count>& pieces) {
    return statementText(figure, skewers::recipe(), pieces);
}

}  // namespace

TEST_CASE("two and three pieces come from the unrounded piece", "[publish]") {
    // 58.4, 116.8 and 175.2: twice and three times a printed 58 would say 116 and 174.
    CHECK(stated(skewers::known(ENERC_KCAL, 58.4, 2.5), {counted(1), counted(2), counted(3)}) ==
          "1 skewer has 58 kcal, 2 skewers have 117 kcal and 3 skewers have 175 kcal. Each number "
          "is rounded once, from 58.4 kcal a skewer (± 4.9 at 95 %, this batch).");
}

TEST_CASE("fractions of a piece are counted exactly", "[publish]") {
    CHECK(stated(skewers::known(ENERC_KCAL, 58.4), {counted(1, 2), counted(3, 2)}) ==
          "1/2 skewer has 29 kcal and 1 1/2 skewers have 88 kcal. Each number is rounded once, "
          "from 58.4 kcal a skewer (± 0.0 at 95 %, this batch).");
    CHECK(stated(skewers::known(ENERC_KCAL, 30), {counted(1, 3)}) ==
          "1/3 skewer has 10 kcal. Each number is rounded once, from 30.0 kcal a skewer (± 0.0 at "
          "95 %, this batch).");
}

TEST_CASE("what is not energy is named, with the decimals of its unit", "[publish]") {
    CHECK(stated(skewers::known(FAT, 3.615, 0.1), {counted(1), counted(2)}) ==
          "1 skewer has 3.6 g of fat and 2 skewers have 7.2 g of fat. Each number is rounded "
          "once, from 3.62 g a skewer (± 0.20 at 95 %, this batch).");
    CHECK(stated(skewers::known(ENERC_KJ, 305), {counted(1)}).starts_with("1 skewer has 305 kJ."));
}

TEST_CASE("a figure with missing parts says at least, rounded down", "[publish]") {
    CHECK(stated(skewers::open(VITC, 5.27, {}, 0.5527), {counted(1), counted(2)}) ==
          "1 skewer has at least 5.2 mg of vitamin C and 2 skewers have at least 10.5 mg of "
          "vitamin C. The rest has no data: known for 55 % of the weight.");
}
