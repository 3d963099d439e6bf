#include "core/nutrition/figures.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/target.h"
#include "core/publish/figures_json.h"
#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// Oil and fennel, with 12 g of the two left in the bowl and 400 g on the plate, sticks of 10 g in
/// it.
Kitchen salad() {
    Kitchen kitchen;
    kitchen.reading("oil", "41").reading("fennel", "382").reading("left", "12", "", "residue");
    kitchen.reading("dish", "400", "", "cooked").reading("sticks", "10", "", "residue");
    kitchen.line(R"({"id":"oil","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(
        R"({"id":"fennel","amount":"2","piece":"bulb","food":"fennel","weighed":["fennel"]})");
    kitchen.json("residues", R"([{"mixture":["oil","fennel"],"readings":["left"]}])");
    return kitchen.json("cooked", R"({"readings":["dish"],"not_eaten":["sticks"]})");
}

}  // namespace

TEST_CASE("every line of a mixture loses the same share", "[nutrition]") {
    const Served served{salad()};
    const double share = 12.0 / 423;
    CHECK(served.cooked.lines[0].eaten.value() == Approx(41 * (1 - share)));
    CHECK(served.cooked.lines[1].eaten.value() == Approx(382 * (1 - share)));
    CHECK(served.figure(Basis::Batch, ENERC_KCAL).value ==
          Approx((41 * 8.84 + 382 * 0.31) * (1 - share)));
}

TEST_CASE("a residue of one line is taken from that line, drip as a food of its own",
          "[nutrition]") {
    Kitchen one = salad().json("residues", R"([{"line":"oil","readings":["left"]}])");
    CHECK(Served{one}.cooked.lines[0].eaten.value() == Approx(29));
    Kitchen drip = salad().json("residues", R"([{"drip":"oil","readings":["left"]}])");
    CHECK(Served{drip}.figure(Basis::Batch, FAT).value == Approx(29 + 382 * 0.002));
}

TEST_CASE("an unknown residue lies between the leanest and the richest line", "[nutrition]") {
    Kitchen kitchen = salad().json("residues", R"([{"unknown":true,"readings":["left"]}])");
    const Figure fat = Served{kitchen}.figure(Basis::Batch, FAT);
    CHECK(fat.value == Approx(41 + 382 * 0.002 - 12 * (1 + 0.002) / 2));
    CHECK(fat.u >= 12 * (1 - 0.002) / std::sqrt(12.0));
}

TEST_CASE("more cannot be left over than went in", "[nutrition]") {
    Kitchen kitchen = salad().reading("much", "424", "", "residue");
    kitchen.json("residues", R"([{"mixture":["oil","fennel"],"readings":["much"]}])");
    const Error error = cook(Served::orThrow(kitchen.dossier())).error();
    CHECK(error.code == ErrorCode::ResidueTooLarge);
    CHECK(error.pointer == "/residues/0");
    Kitchen sticks = salad().json("cooked", R"({"readings":["sticks"],"not_eaten":["dish"]})");
    CHECK(cook(Served::orThrow(sticks.dossier())).error().code == ErrorCode::NotEatenTooLarge);
}

TEST_CASE("an unknown residue may be of the sauce that a dish is made with", "[nutrition]") {
    Kitchen sauce = Kitchen{}.line(R"({"id":"o","amount":"100","unit":"g","food":"oil"})");
    Kitchen dish = Kitchen{}.reading("left", "10", "", "residue").kept("sauce", sauce);
    dish.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})");
    dish.line(R"({"id":"s","amount":"1","piece":"batch","food":"sauce"})");
    dish.json("residues", R"([{"unknown":true,"readings":["left"]}])");
    CHECK(Served{dish}.figure(Basis::Batch, FAT).value == Approx(90));
}

TEST_CASE("a figure is of one unrounded batch, whatever it is per", "[nutrition]") {
    const Served served{salad()};
    const Figure batch = served.figure(Basis::Batch, ENERC_KCAL);
    CHECK(served.figure(Basis::Piece, ENERC_KCAL).value == Approx(batch.value / 10));
    CHECK(served.figure(Basis::Portion, ENERC_KCAL).value == Approx(batch.value / 5));
    CHECK(served.figure(Basis::Portion, ENERC_KCAL).u == Approx(batch.u / 5));
    // Per 100 g of what is eaten of the cooked dish; its weight is uncertain too.
    const Figure hundred = served.figure(Basis::Hundred, ENERC_KCAL);
    CHECK(hundred.value == Approx(100 * batch.value / 390));
    CHECK(hundred.u > 100 * batch.u / 390);
    CHECK(*portionGrams(served.dossier, served.cooked) == Approx(78));
}

TEST_CASE("without a cooked weight 100 g are 100 g before cooking", "[nutrition]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    const Served served{kitchen};
    const auto figures = figuresPer(Basis::Hundred, served.dossier, served.cooked);
    CHECK(figures->beforeCooking);
    CHECK((*figures)[ENERC_KCAL].value == Approx(31));
    CHECK((*figures)[ENERC_KCAL].u == Approx(0).margin(1e-12));  // the weight cancels
    Kitchen grams = kitchen.json("portion", R"({"grams":"150"})");
    const Served byGrams{grams};
    CHECK(figuresPer(Basis::Portion, byGrams.dossier, byGrams.cooked).error().code ==
          ErrorCode::CookedWeightMissing);
}

TEST_CASE("a missing component makes the total say at least and at most", "[nutrition]") {
    Kitchen kitchen = salad();
    const Served served{kitchen};
    const Figure trans = served.figure(Basis::Batch, FATRN);
    CHECK_FALSE(trans.complete());
    CHECK(trans.atLeast == 0);
    const double oil = 41 * (1 - 12.0 / 423);
    CHECK(*trans.atMost == Approx(oil * (100 - 13.808 - 72.961 - 10.523) / 100));
    CHECK(trans.knownShare == Approx(382.0 / 423));
    REQUIRE(trans.missingFoods.size() == 1);
    CHECK(served.dossier.foods[trans.missingFoods[0]].name == "oil");
    const Figure vitamin = served.figure(Basis::Batch, VITD);
    CHECK_FALSE(vitamin.atMost);
    CHECK(vitamin.knownShare == Approx(0).margin(1e-12));
    CHECK_FALSE(intervalOf(vitamin).high);
}

TEST_CASE("drip without a value may take all there is, and adds nothing", "[nutrition]") {
    // Sodium is known for oil and fennel, and not for the drip of sugar syrup.
    Kitchen kitchen = salad().json("residues", R"([{"drip":"sugar","readings":["left"]}])");
    const Figure sodium = Served{kitchen}.figure(Basis::Batch, NA);
    CHECK_FALSE(sodium.complete());
    CHECK(sodium.atLeast == 0);
    REQUIRE(sodium.atMost);
    CHECK(*sodium.atMost == Approx(sodium.value));
    CHECK(sodium.knownShare == Approx(1 - 12.0 / 411));
}

TEST_CASE("an interval never begins below nothing", "[nutrition]") {
    Figure figure;
    figure.value = figure.atLeast = 1;
    figure.atMost = 1;
    figure.u = 2;
    figure.freedom = 10;
    const FigureInterval interval = intervalOf(figure);
    CHECK(interval.low == 0);
    CHECK(*interval.high == Approx(1 + 2.228 * 2));
}

TEST_CASE("a ceiling is not met while the upper end exceeds it", "[nutrition]") {
    const auto stateUnder = [](const char* ceiling) {
        Kitchen kitchen = salad();
        kitchen.json("targets",
                     std::string{R"([{"component":"ENERC_KCAL","per":"portion","at_most":")"} +
                         ceiling + R"("}])");
        const Served served{kitchen};
        return verdictsOf(served.dossier, served.cooked)->front().state;
    };
    const Served served{salad()};
    const FigureInterval interval = intervalOf(served.figure(Basis::Portion, ENERC_KCAL));
    const double value = served.figure(Basis::Portion, ENERC_KCAL).value;
    CHECK(value == Approx(93.4).margin(0.1));
    CHECK(*interval.high > 94);
    CHECK(stateUnder("120") == TargetState::Met);
    CHECK(stateUnder("94") == TargetState::ValueOnly);
    CHECK(stateUnder("90") == TargetState::NotMet);
}

TEST_CASE("the order of lines changes no digit", "[nutrition]") {
    const auto bytes = [](const Kitchen& kitchen) {
        const Served served{kitchen};
        return writeJson(figuresJson(*figuresPer(Basis::Portion, served.dossier, served.cooked),
                                     served.dossier, served.cooked));
    };
    Kitchen forward = salad();
    forward.line(R"({"id":"s1","amount":"0.1","unit":"g","food":"sugar"})");
    forward.line(R"({"id":"s2","amount":"0.2","unit":"g","food":"sugar"})");
    forward.line(R"({"id":"s3","amount":"0.3","unit":"g","food":"sugar"})");
    Kitchen backward = forward;
    Json reversed = Json::array();
    const auto& lines = *forward.document().find("lines")->items();
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) reversed.append(*line);
    backward.json("lines", writeJson(reversed));
    CHECK(bytes(forward) == bytes(backward));
}

TEST_CASE("compositions at hand give the figures that they would give anew", "[nutrition]") {
    const auto bytes = [](const Dossier& dossier, const Cooked& cooked) {
        return writeJson(
            figuresJson(*figuresPer(Basis::Hundred, dossier, cooked), dossier, cooked));
    };
    Served before{salad()};
    Kitchen kitchen = salad();
    kitchen.line(R"({"id":"more","amount":"20","unit":"g","food":"fennel"})");
    const Served anew{kitchen};
    const auto edited = cook(anew.dossier, std::move(before.cooked.compositions));
    REQUIRE(edited);
    CHECK(bytes(anew.dossier, *edited) == bytes(anew.dossier, anew.cooked));
}
