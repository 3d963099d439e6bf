#include "core/nutrition/target.h"

#include <catch2/catch.hpp>

#include "core/nutrition/student_t.h"
#include "kitchen.h"

// How sure a promise is, and how large a portion keeps it.

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

TargetVerdict verdictOn(Kitchen kitchen, const std::string& target,
                        Meaning meaning = Meaning::ThisBatch) {
    kitchen.json("targets", "[" + target + "]");
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const Cooked cooked = Served::orThrow(cook(dossier, meaning));
    return Served::orThrow(verdictsOf(dossier, cooked)).front();
}

Kitchen sweetDish() {
    return Kitchen{}.line(R"({"id":"s","amount":"100.00","unit":"g","food":"sugar"})");
}

}  // namespace

// 19.96 g of sugar a portion, u = 0.0447 g with 3 degrees of freedom. Printed tables of Student's t
// (JCGM 100:2008, table G.2) have t = 3.18 for 95 % and 3: 97.5 % lie below.
TEST_CASE("a ceiling is kept with the probability of Student's t", "[nutrition]") {
    const TargetVerdict even =
        verdictOn(sweetDish(), R"({"component":"SUGAR","per":"portion","at_most":"19.96"})");
    CHECK(even.probability == Approx(0.5).epsilon(1e-3));
    const double end = even.figure.value + 3.18 * even.figure.u;
    CHECK(studentProbability((end - even.figure.value) / even.figure.u, 3) ==
          Approx(0.975).epsilon(2e-4));
    const TargetVerdict floor =
        verdictOn(sweetDish(), R"({"component":"SUGAR","per":"portion","at_least":"19.96"})");
    CHECK(floor.probability == Approx(1 - even.probability));
    CHECK_FALSE(floor.largestPortion);
}

TEST_CASE("the largest portion is where the upper end meets the ceiling", "[nutrition]") {
    const TargetVerdict verdict =
        verdictOn(sweetDish(), R"({"component":"SUGAR","per":"portion","at_most":"30"})");
    REQUIRE(verdict.largestPortion);
    // Two pieces reach up to the upper end; everything grows in proportion.
    CHECK(*verdict.largestPortion == Approx(2 * 30 / *verdict.interval.high));
    // A portion of so many pieces just keeps to it.
    Kitchen just = sweetDish();
    just.json("portion", R"({"pieces":"3"})");
    const TargetVerdict three =
        verdictOn(just, R"({"component":"SUGAR","per":"portion","at_most":"30"})");
    CHECK(*three.largestPortion == Approx(*verdict.largestPortion));
}

TEST_CASE("of any pieces a smaller portion is safe than of fair ones", "[nutrition]") {
    const char* target = R"({"component":"SUGAR","per":"portion","at_most":"30"})";
    const double fair = *verdictOn(sweetDish(), target).largestPortion;
    const double any = *verdictOn(sweetDish(), target, Meaning::AnyPiece).largestPortion;
    CHECK(any < fair);
    CHECK(any > 0.5 * fair);
    CHECK(verdictOn(sweetDish(), target, Meaning::AnyPiece).probability <
          verdictOn(sweetDish(), target).probability);
}

TEST_CASE("nothing can be promised where a missing part has no bound", "[nutrition]") {
    const TargetVerdict verdict =
        verdictOn(sweetDish(), R"({"component":"CHOLE","per":"portion","at_most":"30"})");
    CHECK(verdict.probability == 0);
    CHECK_FALSE(verdict.largestPortion);
    CHECK(verdict.state == TargetState::NotMet);
}
