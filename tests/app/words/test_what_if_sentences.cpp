#include <catch2/catch.hpp>

#include "app/words/error_sentence.h"
#include "core/edit/tried_edits.h"
#include "core/nutrition/what_if.h"
#include "kitchen.h"

namespace nettare {

namespace {

using TestKitchen = ::kitchen::Kitchen;
using ::kitchen::Served;

TEST_CASE("a target out of reach says which line and between which ends") {
    TestKitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel"})");
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil"})");
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const TargetEntry target{Component::ENERC_KCAL, Basis::Piece, Decimal{5, 0}, std::nullopt};
    const auto solved = solvedAmount(dossier, target, 1, {}, Meaning::ThisBatch);
    REQUIRE_FALSE(solved);
    CHECK(errorSentence(solved.error()) ==
          "main, /lines/1: no amount of oil meets it: the end that counts stays between 19 and "
          "430 kcal; change another line.");
}

TEST_CASE("an amount that is none cannot be taken over") {
    const TestKitchen kitchen = TestKitchen{}.line(R"({"id":"s","to_taste":true,"food":"sugar"})");
    const auto edit = takeOverAmounts(kitchen.document(), {{"s", 2}});
    REQUIRE_FALSE(edit);
    CHECK(errorSentence(edit.error()) ==
          "/lines/s/amount: “to taste” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3.");
}

}  // namespace

}  // namespace nettare
