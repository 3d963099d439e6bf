#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/what_if.h"
#include "kitchen.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

Kitchen fennelInOil() {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel"})");
    return kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil"})");
}

TargetEntry ceiling(Component component, Basis per, std::int64_t most) {
    return {component, per, Decimal{most, 0}, std::nullopt};
}
TargetEntry floorOf(Component component, Basis per, std::int64_t least) {
    return {component, per, std::nullopt, Decimal{least, 0}};
}

Figure figureWith(const Dossier& dossier, const std::vector<ChangedLine>& changes,
                  Component component, Basis basis = Basis::Batch) {
    const Dossier changed = withChanges(dossier, changes);
    const Cooked cooked = Served::orThrow(cook(changed));
    return Served::orThrow(figuresPer(basis, changed, cooked))[component];
}

FigureInterval intervalWith(const Dossier& dossier, std::size_t line, double factor,
                            const TargetEntry& target) {
    return intervalOf(figureWith(dossier, {{line, factor}}, target.component, target.per));
}

}  // namespace

TEST_CASE("a changed amount changes grams and their uncertainty in proportion", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const Figure now = figureWith(dossier, {}, FASAT);
    const Figure half = figureWith(dossier, {{1, 0.5}}, FASAT);
    CHECK(half.value == Approx(now.value / 2));
    CHECK(half.u == Approx(now.u / 2));
    CHECK(figureWith(dossier, {{1, 0.5}, {1, 2}}, FASAT).value == Approx(now.value));
}

TEST_CASE("a line tried with nothing contributes nothing and is missed by nobody", "[nutrition]") {
    const Dossier both = Served::orThrow(fennelInOil().dossier());
    const Kitchen alone = Kitchen{}.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil"})");
    const Dossier oil = Served::orThrow(alone.dossier());
    for (const ComponentFacts& facts : allComponents()) {
        CAPTURE(facts.tagname);
        const Figure without = figureWith(both, {{0, 0}}, facts.component);
        const Figure never = figureWith(oil, {}, facts.component);
        CHECK(without.value == never.value);
        CHECK(without.u == never.u);
        CHECK(without.missingFoods.size() == never.missingFoods.size());
        CHECK(without.atMost == never.atMost);
    }
}

TEST_CASE("nothing can be left over of a line tried with nothing", "[nutrition]") {
    Kitchen kitchen = fennelInOil().reading("left", "10", "", "residue");
    kitchen.json("residues", R"([{"line":"o","readings":["left"]}])");
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const auto cooked = cook(withChanges(dossier, {{1, 0}}));
    REQUIRE_FALSE(cooked);
    CHECK(cooked.error().code == ErrorCode::ResidueTooLarge);
    // Of the mixture the fennel alone then leaves all 10 g.
    kitchen.json("residues", R"([{"mixture":["f","o"],"readings":["left"]}])");
    const Dossier mixed = Served::orThrow(kitchen.dossier());
    CHECK(figureWith(mixed, {{1, 0}}, ENERC_KCAL).value == Approx((468 - 10) * 0.31));
    const auto nothing = cook(withChanges(mixed, {{0, 0}, {1, 0}}));
    REQUIRE_FALSE(nothing);
    CHECK(nothing.error().code == ErrorCode::ResidueTooLarge);
}

TEST_CASE("a recipe tried with nothing at all has no figures", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const auto nothing = cook(withChanges(dossier, {{0, 0}, {1, 0}}));
    REQUIRE_FALSE(nothing);
    CHECK(nothing.error().code == ErrorCode::NothingCounted);
}

TEST_CASE("a cooked weight grows by what a tried amount adds", "[nutrition]") {
    Kitchen kitchen = fennelInOil().reading("done", "450", "", "cooked");
    kitchen.json("cooked", R"({"readings":["done"]})");
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const Cooked more = Served::orThrow(cook(withChanges(dossier, {{1, 2}})));
    // Three spoons of 13.5 g more.
    CHECK(more.eaten.cooked->value() == Approx(450 + 40.5));
    CHECK(more.eaten.used.value() - more.eaten.cooked->value() == Approx(468 + 40.5 - 450));
    const double perBatch = figureWith(dossier, {{1, 2}}, FAT).value;
    CHECK(figureWith(dossier, {{1, 2}}, FAT, Basis::Hundred).value ==
          Approx(perBatch * 100 / 490.5));
}

TEST_CASE("the most oil that keeps to a ceiling is found, on the safe side", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const TargetEntry target = ceiling(ENERC_KCAL, Basis::Piece, 40);
    const auto solved = solvedAmount(dossier, target, 1, {}, Meaning::ThisBatch);
    REQUIRE(solved);
    CHECK(*solved->interval.high <= 40);
    CHECK(*intervalWith(dossier, 1, solved->factor, target).high == *solved->interval.high);
    // One in the fourth digit more would be too much.
    CHECK(*intervalWith(dossier, 1, solved->factor * 1.001, target).high > 40);
    CHECK(Decimal::fromDouble(solved->factor).text().size() <= 6);
}

TEST_CASE("the least oil that reaches a floor is found, on the safe side", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const TargetEntry target = floorOf(FAT, Basis::Portion, 10);
    const auto solved = solvedAmount(dossier, target, 1, {}, Meaning::ThisBatch);
    REQUIRE(solved);
    CHECK(solved->interval.low >= 10);
    CHECK(intervalWith(dossier, 1, solved->factor * 0.999, target).low < 10);
}

TEST_CASE("changes of other lines hold while one amount is solved", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const TargetEntry target = ceiling(ENERC_KCAL, Basis::Piece, 40);
    const auto alone = solvedAmount(dossier, target, 1, {}, Meaning::ThisBatch);
    const auto less = solvedAmount(dossier, target, 1, {{0, 0.5}, {1, 7}}, Meaning::ThisBatch);
    REQUIRE(alone);
    REQUIRE(less);
    CHECK(less->factor > alone->factor);
}

TEST_CASE("lean food solves a ceiling per 100 g by more of it", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const TargetEntry target = ceiling(FAT, Basis::Hundred, 5);
    const auto solved = solvedAmount(dossier, target, 0, {}, Meaning::ThisBatch);
    REQUIRE(solved);
    CHECK(solved->factor > 1);
    CHECK(*solved->interval.high <= 5);
    CHECK(*intervalWith(dossier, 0, solved->factor * 0.999, target).high > 5);
}

TEST_CASE("a target that any amount meets is met by the end of the range", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const auto most =
        solvedAmount(dossier, ceiling(ENERC_KCAL, Basis::Piece, 900), 1, {}, Meaning::ThisBatch);
    REQUIRE(most);
    CHECK(most->factor == kMostTimes);
    const auto least =
        solvedAmount(dossier, floorOf(FIBTG, Basis::Batch, 1), 1, {}, Meaning::ThisBatch);
    REQUIRE(least);
    CHECK(least->factor == 0);
}

TEST_CASE("a target out of reach says between which ends the figure stays", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const auto solved =
        solvedAmount(dossier, ceiling(ENERC_KCAL, Basis::Piece, 5), 1, {}, Meaning::ThisBatch);
    REQUIRE_FALSE(solved);
    const Error& error = solved.error();
    CHECK(error.code == ErrorCode::TargetOutOfReach);
    CHECK(error.value("line") == "oil");
    CHECK(error.value("unit") == "kcal");
    // 468 g of fennel in ten pieces, and ten times three spoons of oil beside it.
    CHECK(error.value("least") == "19");
    CHECK(error.value("most") == "430");
    CHECK(error.pointer == "/lines/1");
}

TEST_CASE("an amount is solved for the meaning that is asked", "[nutrition]") {
    const Dossier dossier = Served::orThrow(fennelInOil().dossier());
    const TargetEntry target = ceiling(ENERC_KCAL, Basis::Piece, 40);
    const auto batch = solvedAmount(dossier, target, 1, {}, Meaning::ThisBatch);
    const auto piece = solvedAmount(dossier, target, 1, {}, Meaning::AnyPiece);
    REQUIRE(batch);
    REQUIRE(piece);
    CHECK(piece->factor < batch->factor);
}

TEST_CASE("what is solved of any recipe keeps to its target", "[nutrition]") {
    RandomRecipes recipes{7, RandomRecipes::Draw::AllWays};
    int solvedOnes = 0;
    for (int i = 0; i < 120; ++i) {
        const auto dossier = recipes.next().dossier();
        REQUIRE(dossier);
        const auto cooked = cook(*dossier);
        if (!cooked) continue;
        const Figure now = Served::orThrow(figuresPer(Basis::Piece, *dossier, *cooked))[ENERC_KCAL];
        const auto most = static_cast<std::int64_t>(std::lround(now.value * 0.9)) + 1;
        const TargetEntry target = ceiling(ENERC_KCAL, Basis::Piece, most);
        const auto solved = solvedAmount(*dossier, target, 0, {}, Meaning::ThisBatch);
        if (!solved) {
            CHECK(solved.error().code == ErrorCode::TargetOutOfReach);
            continue;
        }
        ++solvedOnes;
        CHECK(*solved->interval.high <= static_cast<double>(most));
    }
    CHECK(solvedOnes > 20);
}
