#include "core/nutrition/line_counting.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// 60 g of oil and a line of sugar, with the recipe's rules.
Kitchen counted(const std::string& sugar, const std::string& rules) {
    Kitchen kitchen;
    kitchen.reading("oil", "60").reading("sugar", "20");
    kitchen.line(R"({"id":"oil","amount":"4","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(R"({"id":"sugar","food":"sugar",)" + sugar + "}");
    return kitchen.json("counting", "{" + rules + "}");
}

const LineReport& sugarOf(const Served& served) {
    return served.cooked.lines[1];
}

const std::string kToTaste = R"("to_taste":true)";
const std::string kOptional = R"("amount":"100","unit":"g","optional":true)";

bool dependsOn(const LinearForm& form, SourceKind kind) {
    return std::ranges::any_of(form.terms(), [&](const LinearForm::Term& term) {
        return term.source.key.kind == kind && term.sensitivity != 0;
    });
}

}  // namespace

TEST_CASE("a line to taste is left out, and said to be", "[nutrition]") {
    const Served served{counted(kToTaste, "")};
    CHECK(sugarOf(served).counting == LineCounting::ToTaste);
    CHECK(sugarOf(served).eaten.value() == 0);
    CHECK(served.cooked.lines[0].counting == LineCounting::Counted);
    CHECK(served.figure(Basis::Batch, CHOCDF).value == 0);
    REQUIRE(served.cooked.eaten.open.size() == 1);
    CHECK(served.cooked.eaten.open[0] == OpenLine{1, LineCounting::ToTaste});
    // Sugar's row has no sodium; what is left out is missing from nothing.
    CHECK(served.figure(Basis::Batch, NA).complete());
}

TEST_CASE("what was weighed or assumed of a line to taste counts", "[nutrition]") {
    const Served weighed{counted(kToTaste + R"(,"weighed":["sugar"])", "")};
    CHECK(sugarOf(weighed).counting == LineCounting::Counted);
    CHECK(sugarOf(weighed).eaten.value() == Approx(20));
    CHECK(weighed.way(1).way == Way::Weighed);
    const Served assumed{
        counted(kToTaste + R"(,"assumed":{"grams":"5","within":"5","reason":"by eye"})", "")};
    CHECK(sugarOf(assumed).eaten.value() == Approx(5));
    CHECK(assumed.cooked.eaten.open.empty());
}

// Ten pieces in portions of two are five portions: 5/16 teaspoon of 4.2 g, published with n = 10
// and s = 0.3 g: 1.3125 g. Uncertainty: of the pinch 1.3125/sqrt(12) = 0.37889, of the mean
// 5/16 x 0.3/sqrt(10) = 0.02965, of the spoons 0.3 sqrt(5/16) = 0.16771; together 0.41540 g.
TEST_CASE("a pinch for each portion by the food's own measures", "[nutrition]") {
    const std::string rule = R"("to_taste":"a pinch a portion")";
    const Served served{counted(kToTaste, rule)};
    CHECK(sugarOf(served).counting == LineCounting::Counted);
    CHECK(sugarOf(served).eaten.value() == Approx(1.3125));
    CHECK(sugarOf(served).eaten.uncertainty() == Approx(0.41540).epsilon(1e-4));
    // A portion in grams needs the weight of the dish: 100 g in portions of 50 g.
    Kitchen grams = counted(kToTaste, rule).json("portion", R"({"grams":"50"})");
    CHECK(sugarOf(Served{grams}).counting == LineCounting::NoPinch);
    grams.reading("dish", "100", "", "cooked").json("cooked", R"({"readings":["dish"]})");
    CHECK(sugarOf(Served{grams}).eaten.value() == Approx(2 * 4.2 / 16));
}

TEST_CASE("without a measure nobody knows what a pinch weighs", "[nutrition]") {
    Kitchen kitchen = counted(kToTaste, R"("to_taste":"a pinch a portion")");
    kitchen.append("foods", R"({"id":"salt","name":"salt","stated":)"
                            R"([{"component":"NA","per_100g":"38758","reason":"invented"}]})");
    kitchen.line(R"({"id":"salt","to_taste":true,"food":"salt"})");
    const Served served{kitchen};
    CHECK(served.cooked.lines[2].counting == LineCounting::NoPinch);
    CHECK(served.cooked.lines[2].eaten.value() == 0);
}

TEST_CASE("an optional line is counted, left out, or between", "[nutrition]") {
    const Served counts{counted(kOptional, "")};
    CHECK(sugarOf(counts).eaten.value() == Approx(100));
    CHECK(sugarOf(counts).counting == LineCounting::Counted);
    const Served without{counted(kOptional, R"("optional":"left out")")};
    CHECK(sugarOf(without).counting == LineCounting::Optional);
    CHECK(sugarOf(without).asUsed.value() == 0);
    CHECK(without.figure(Basis::Batch, CHOCDF).value == 0);
    // Half of 100 g, written to 1 g, with a rectangle from none to all.
    const Served half{counted(kOptional, R"("optional":"between")")};
    CHECK(sugarOf(half).counting == LineCounting::Between);
    CHECK(sugarOf(half).eaten.value() == Approx(50));
    CHECK(sugarOf(half).eaten.uncertainty() ==
          Approx(std::hypot(100 / std::sqrt(12.0), 0.5 / std::sqrt(12.0))));
    CHECK(half.figure(Basis::Batch, SUGAR).value == Approx(49.9));
}

TEST_CASE("an optional line needs no weight to be left out", "[nutrition]") {
    const std::string unknown = R"("amount":"1","piece":"cube","optional":true)";
    CHECK(sugarOf(Served{counted(unknown, R"("optional":"left out")")}).eaten.value() == 0);
    const auto counts = counted(unknown, "").dossier();
    CHECK(cook(*counts).error().code == ErrorCode::NoWayToGrams);
}

// 8 g of 60 + 20 g were left over: a tenth of each, whether the sugar counts or not.
TEST_CASE("what is left over was weighed with the lines that do not count", "[nutrition]") {
    for (const char* rule : {"counted", "left out", "between"}) {
        Kitchen kitchen = counted(R"("amount":"20","unit":"g","optional":true)",
                                  R"("optional":")" + std::string{rule} + "\"");
        kitchen.reading("left", "8", "", "residue");
        kitchen.json("residues", R"([{"mixture":["oil","sugar"],"readings":["left"]}])");
        CHECK(Served{kitchen}.cooked.lines[0].eaten.value() == Approx(54));
    }
    Kitchen sugar =
        counted(R"("amount":"20","unit":"g","optional":true)", R"("optional":"between")");
    sugar.reading("left", "8", "", "residue");
    sugar.json("residues", R"([{"line":"sugar","readings":["left"]}])");
    CHECK(sugarOf(Served{sugar}).eaten.value() == Approx(6));
}

TEST_CASE("a recipe of which nothing counts is refused", "[nutrition]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"sugar","to_taste":true,"food":"sugar"})");
    kitchen.line(R"({"id":"oil","amount":"1","unit":"tbsp","food":"oil","optional":true})");
    kitchen.json("counting", R"({"optional":"left out"})");
    const auto cooked = cook(*kitchen.dossier());
    REQUIRE_FALSE(cooked);
    CHECK(cooked.error().code == ErrorCode::NothingCounted);
    CHECK(cooked.error().pointer == "/lines");
}

TEST_CASE("a range of an amount is its middle, its least or its most", "[nutrition]") {
    const auto fennel = [](const char* rule) {
        Kitchen kitchen;
        kitchen.line(R"({"id":"f","amount":"2-3","piece":"bulb","food":"fennel"})");
        kitchen.json("counting", R"({"ranges":")" + std::string{rule} + "\"}");
        return Served{kitchen}.cooked.lines[0].eaten;
    };
    CHECK(fennel("middle").value() == Approx(2.5 * 234));
    CHECK(dependsOn(fennel("middle"), SourceKind::AmountRange));
    CHECK(fennel("least").value() == Approx(2 * 234));
    CHECK_FALSE(dependsOn(fennel("least"), SourceKind::AmountRange));
    CHECK(fennel("most").value() == Approx(3 * 234));
}

// Four to six pieces are five with u = 2/sqrt(12): 11.5 % of the figure of one piece.
TEST_CASE("what serves four to six is five, and each piece as uncertain", "[nutrition]") {
    const auto served = [](const char* pieces, const char* rule) {
        Kitchen kitchen;
        kitchen.reading("oil", "100");
        kitchen.line(R"({"id":"o","amount":"1","piece":"lot","food":"oil","weighed":["oil"]})");
        kitchen.json("makes", R"({"pieces":")" + std::string{pieces} +
                                  R"(","piece":"piece","plural":"pieces"})");
        return Served{kitchen.json("counting", R"({"makes":")" + std::string{rule} + "\"}")};
    };
    const Served five = served("5", "middle");
    const Served range = served("4-6", "middle");
    for (const Basis basis : {Basis::Piece, Basis::Portion}) {
        const Figure plain = five.figure(basis, FAT);
        const Figure open = range.figure(basis, FAT);
        CHECK(open.value == Approx(plain.value));
        CHECK(open.u == Approx(std::hypot(plain.u, plain.value * 2 / std::sqrt(12.0) / 5)));
    }
    for (const Basis basis : {Basis::Hundred, Basis::Batch})
        CHECK(range.figure(basis, FAT).u == five.figure(basis, FAT).u);
    CHECK(served("4-6", "least").figure(Basis::Piece, FAT).value == Approx(25));
    CHECK(served("4-6", "most").figure(Basis::Piece, FAT).value == Approx(100.0 / 6));
    CHECK(served("4-6", "most").figure(Basis::Piece, FAT).u ==
          Approx(served("6", "middle").figure(Basis::Piece, FAT).u));
}

TEST_CASE("a kept recipe counts by its own rules", "[nutrition]") {
    Kitchen sauce = counted(kOptional, R"("optional":"left out","makes":"middle")");
    sauce.json("makes", R"({"pieces":"4-6","piece":"spoon","plural":"spoons"})");
    Kitchen dish;
    dish.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})").kept("sauce", sauce);
    dish.line(R"({"id":"s","amount":"1","piece":"spoon","food":"sauce"})");
    const Served served{dish};
    const LinearForm& spoon = served.cooked.lines[0].eaten;
    CHECK(spoon.value() == Approx(12));
    CHECK(dependsOn(spoon, SourceKind::PiecesRange));
    CHECK(served.figure(Basis::Batch, CHOCDF).value == 0);
    REQUIRE(served.cooked.eaten.open.size() == 1);
    CHECK(served.cooked.eaten.open[0].number == numberOf(1, 1));
}
