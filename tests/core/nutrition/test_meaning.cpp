#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/figures.h"
#include "kitchen.h"

// What a figure is of: the mean of all batches, this batch, or any one piece.

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

Figure figureOf(const Kitchen& kitchen, Basis basis, Component component, Meaning meaning) {
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const Cooked cooked = Served::orThrow(cook(dossier, meaning));
    return Served::orThrow(figuresPer(basis, dossier, cooked))[component];
}

/// 100 g of sugar as written; its SUGAR is 99.80 +- 0.1 of four samples.
Kitchen syrup() {
    return Kitchen{}.line(R"({"id":"s","amount":"100.00","unit":"g","food":"sugar"})");
}

/// Three fine readings of single bulbs: 100, 102 and 104 g, so m = 102 and s = 2.
Kitchen bulbs(const std::string& series = "") {
    Kitchen kitchen;
    kitchen.reading("one", "100.0", "", "edible portion", "fine");
    kitchen.reading("two", "102.0", "", "edible portion", "fine");
    kitchen.reading("three", "104.0", "", "edible portion", "fine");
    kitchen.append("series",
                   R"({"id":"bulbs","name":"bulbs","kind":"per piece","of":"bulb","readings":)"
                   R"(["one","two","three"])" +
                       series + "}");
    return kitchen.line(
        R"({"id":"f","amount":"9","piece":"bulb","food":"fennel","series":{"id":"bulbs","use":"others"}})");
}

}  // namespace

// Arithmetic of the project, section "Composition": the recipe mean takes the table with its
// standard error, one lot scatters about the mean with SE sqrt(n) besides.
TEST_CASE("a lot of a food scatters about the mean that the recipe has", "[nutrition]") {
    const Figure mean = figureOf(syrup(), Basis::Batch, SUGAR, Meaning::RecipeMean);
    const Figure batch = figureOf(syrup(), Basis::Batch, SUGAR, Meaning::ThisBatch);
    CHECK(mean.value == batch.value);
    CHECK(mean.u == Approx(0.1).epsilon(1e-3));
    CHECK(batch.u == Approx(std::sqrt(0.01 + 4 * 0.01)).epsilon(1e-3));
    CHECK(batch.freedom == Approx(3).epsilon(1e-3));
}

TEST_CASE("the pieces of one batch scatter, those of all batches do not", "[nutrition]") {
    const Figure mean = figureOf(bulbs(), Basis::Batch, FAT, Meaning::RecipeMean);
    const Figure batch = figureOf(bulbs(), Basis::Batch, FAT, Meaning::ThisBatch);
    // N^2 s^2 / n alone, and with N s^2, times 0.20 g of fat in 100 g. The empty scale was read
    // once for all three, which adds its rounding.
    CHECK(mean.u == Approx(0.002 * std::sqrt(81 * 4 / 3.0)).epsilon(1e-3));
    CHECK(batch.u == Approx(0.002 * std::sqrt(81 * 4 / 3.0 + 9 * 4)).epsilon(1e-3));
}

TEST_CASE("any one piece differs from its fair share", "[nutrition]") {
    const Figure batch = figureOf(syrup(), Basis::Piece, SUGAR, Meaning::ThisBatch);
    const Figure any = figureOf(syrup(), Basis::Piece, SUGAR, Meaning::AnyPiece);
    // Nothing was weighed: the assumed spread of pieces, 14 %.
    CHECK(any.u * any.u == Approx(batch.u * batch.u + std::pow(0.14 * batch.value, 2)));
    const Figure two = figureOf(syrup(), Basis::Portion, SUGAR, Meaning::AnyPiece);
    CHECK(two.u * two.u == Approx(4 * batch.u * batch.u + std::pow(0.14 * two.value, 2) / 2));
    CHECK(figureOf(syrup(), Basis::Batch, SUGAR, Meaning::AnyPiece).u ==
          figureOf(syrup(), Basis::Batch, SUGAR, Meaning::ThisBatch).u);
    Kitchen weighed = bulbs().json(
        "makes", R"({"pieces":"10","piece":"bulb","plural":"bulbs","weighed":"bulbs"})");
    const Figure fair = figureOf(weighed, Basis::Piece, FAT, Meaning::ThisBatch);
    const Figure own = figureOf(weighed, Basis::Piece, FAT, Meaning::AnyPiece);
    CHECK(own.u * own.u == Approx(fair.u * fair.u + std::pow(2.0 / 102 * fair.value, 2)));
}

TEST_CASE("the recipe mean takes the mean of its test cooks", "[nutrition]") {
    Kitchen kitchen = syrup();
    kitchen.reading("c1", "80.0", "", "cooked", "fine");
    kitchen.reading("c2", "82.0", "", "cooked", "fine");
    kitchen.reading("c3", "84.0", "", "cooked", "fine");
    kitchen.json("cooked",
                 R"({"readings":["c1"],"other_cooks":[{"readings":["c2"]},{"readings":["c3"]}]})");
    const double sugar = 99.80;
    CHECK(figureOf(kitchen, Basis::Hundred, SUGAR, Meaning::ThisBatch).value ==
          Approx(100 * sugar / 80));
    const Figure mean = figureOf(kitchen, Basis::Hundred, SUGAR, Meaning::RecipeMean);
    CHECK(mean.value == Approx(100 * sugar / 82));
    // The weight of three cooks is known to 2 / sqrt(3) g.
    CHECK(mean.u ==
          Approx(100 / 82.0 * std::hypot(0.1, sugar / 82 * 2 / std::sqrt(3.0))).epsilon(1e-3));
}

TEST_CASE("what several test cooks left over counts as their mean", "[nutrition]") {
    Kitchen kitchen = syrup();
    kitchen.reading("l1", "10.0", "", "residue", "fine");
    kitchen.reading("l2", "20.0", "", "residue", "fine");
    kitchen.json("residues",
                 R"([{"line":"s","readings":["l1"],"other_cooks":[{"readings":["l2"]}]}])");
    CHECK(figureOf(kitchen, Basis::Batch, SUGAR, Meaning::ThisBatch).value == Approx(89.82));
    const Figure mean = figureOf(kitchen, Basis::Batch, SUGAR, Meaning::RecipeMean);
    CHECK(mean.value == Approx(84.83));
    CHECK(mean.freedom == Approx(1).epsilon(1e-2));
}

// (nu0 s0^2 + nu s^2) / (nu0 + nu): 8 of the assumed 14 %, 2 of the readings.
TEST_CASE("few readings can be pooled with the assumed spread", "[nutrition]") {
    const Figure alone = figureOf(bulbs(), Basis::Batch, FAT, Meaning::ThisBatch);
    const Figure pooled =
        figureOf(bulbs(R"(,"pooled":true)"), Basis::Batch, FAT, Meaning::ThisBatch);
    CHECK(alone.freedom == Approx(2).epsilon(1e-3));
    CHECK(pooled.freedom == Approx(10).epsilon(1e-3));
    const double s = std::sqrt((8 * std::pow(0.14 * 102, 2) + 2 * 4) / 10);
    CHECK(pooled.u / alone.u == Approx(s / 2).epsilon(1e-3));
}

// 5 of the earlier 3 g, 2 of the readings' 2 g.
TEST_CASE("few readings can be pooled with an earlier series", "[nutrition]") {
    const Figure alone = figureOf(bulbs(), Basis::Batch, FAT, Meaning::ThisBatch);
    const Figure pooled =
        figureOf(bulbs(R"(,"pooled":true,"pooled_with":{"name":"2025","s":"3","nu":"5"})"),
                 Basis::Batch, FAT, Meaning::ThisBatch);
    CHECK(pooled.value == alone.value);
    CHECK(pooled.freedom == Approx(7).epsilon(1e-3));
    CHECK(pooled.u / alone.u == Approx(std::sqrt((5 * 9 + 2 * 4) / 7.0) / 2).epsilon(1e-3));
}

TEST_CASE("only a series of single pieces tells how pieces differ", "[nutrition]") {
    Kitchen kitchen = syrup();
    kitchen.reading("before", "100").reading("after", "80");
    kitchen.append("series", R"({"id":"r","name":"r","kind":"ratio","pairs":[{"before":"before",)"
                             R"("after":"after"}]})");
    kitchen.json("makes", R"({"pieces":"10","piece":"p","plural":"p","weighed":"r"})");
    const auto refused = kitchen.dossier();
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::NoSeriesOfPieces);
    CHECK(refused.error().pointer == "/makes/weighed");
}

TEST_CASE("the spread of what a table gives without one can be assumed otherwise", "[nutrition]") {
    Kitchen oil = Kitchen{}.line(R"({"id":"o","amount":"100.00","unit":"g","food":"oil"})");
    CHECK(figureOf(oil, Basis::Batch, FASAT, Meaning::ThisBatch).u < 0.01);
    oil.json("assumptions", R"({"composition_spread":"0.05"})");
    const Figure fat = figureOf(oil, Basis::Batch, FASAT, Meaning::ThisBatch);
    CHECK(fat.u == Approx(0.05 * 13.808).epsilon(1e-3));
    CHECK(fat.freedom == Approx(8).epsilon(1e-2));
}
