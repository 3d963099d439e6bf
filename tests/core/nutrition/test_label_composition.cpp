#include <catch2/catch.hpp>
#include <cmath>

#include "core/label/label_values.h"
#include "core/nutrition/composition.h"
#include "core/publish/path.h"
#include "kitchen.h"

namespace nettare {

namespace {

using enum Component;
using kitchen::Kitchen;
using kitchen::Served;

/// A yogurt as a European pack prints it, with `more` members of its label.
Kitchen withYogurt(const std::string& declares, const std::string& more = "") {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"yogurt","name":"yogurt","label":{"rules":"eu",)" + more +
                                R"("declares":[)" + declares + "]}}");
    return kitchen;
}

std::string printed(const std::string& tagname, const std::string& amount) {
    return R"({"component":")" + tagname + R"(","printed":")" + amount + R"("})";
}

constexpr const char* kPer100g = R"("per":"100g",)";
constexpr const char* kPer100ml = R"("per":"100ml","density":{"g_per_ml":"1.03","within":"0.02"},)";

Composition yogurtOf(Kitchen kitchen) {
    kitchen.line(R"({"id":"y","amount":"200","unit":"g","food":"yogurt"})");
    const Served served{kitchen};
    return served.cooked.compositions.back();
}

double uncertaintyOf(const Composition& composition, Component component) {
    double squares = 0;
    for (const CompositionSource& source : composition.sources)
        for (const Effect& effect : source.effects)
            if (effect.component == component)
                squares += std::pow(effect.perGram * source.source.u, 2);
    return std::sqrt(squares);
}

}  // namespace

TEST_CASE("salt is sodium times 2.5, with the rounding of the salt", "[nutrition][label]") {
    // Regulation (EU) 1169/2011, Annex I, 11: 1.25 g of salt are 0.5 g of sodium.
    const Composition yogurt = yogurtOf(withYogurt(printed("NACL", "1.3"), kPer100g));
    CHECK(yogurt[NA].origin == Origin::Label);
    CHECK(yogurt[NA].perGram == Approx(1.3 * 400 / 100));
    // Commission guidance of December 2012: from 1 g on to 0.1 g, so 1.3 stands for 1.25 to 1.35.
    CHECK(yogurt[NA].low == Approx(500.0 / 100));
    CHECK(*yogurt[NA].high == Approx(540.0 / 100));
    CHECK(uncertaintyOf(yogurt, NA) == Approx(0.1 / std::sqrt(12.0) * 400 / 100));
}

TEST_CASE("where a pack prints sodium and salt, its sodium counts", "[nutrition][label]") {
    const Composition yogurt =
        yogurtOf(withYogurt(printed("NACL", "1.3") + "," + printed("NA", "510"), kPer100g));
    CHECK(yogurt[NA].perGram == Approx(5.1));
}

TEST_CASE("carbohydrate of a European pack and its fibre make the one with fibre",
          "[nutrition][label]") {
    const Composition yogurt =
        yogurtOf(withYogurt(printed("CHOAVL", "4.8") + "," + printed("FIBTG", "1.5"), kPer100g));
    CHECK(yogurt[CHOCDF].origin == Origin::Label);
    CHECK(yogurt[CHOCDF].perGram == Approx(0.063));
    // Both are printed to 0.1 g, each with a rounding of its own.
    CHECK(uncertaintyOf(yogurt, CHOCDF) == Approx(0.1 / std::sqrt(12.0) * std::sqrt(2.0) / 100));
    CHECK(uncertaintyOf(yogurt, FIBTG) == Approx(0.1 / std::sqrt(12.0) / 100));
}

TEST_CASE("without a printed fibre the carbohydrate with it is open, and at least what is printed",
          "[nutrition][label]") {
    const Composition yogurt = yogurtOf(withYogurt(
        printed("CHOAVL", "4.8") + "," + printed("FAT", "3.5") + "," + printed("PROCNT", "4.1"),
        kPer100g));
    CHECK(yogurt[CHOCDF].origin == Origin::Missing);
    CHECK(yogurt[CHOCDF].low == Approx(0.0475));
    CHECK(*yogurt[CHOCDF].high == Approx(1 - 0.0345 - 0.0405));
    CHECK(*yogurt[SUGAR].high == Approx(0.0485));
    CHECK(*yogurt[FIBTG].high == Approx(1 - 0.0345 - 0.0405 - 0.0475));
}

TEST_CASE("with a stated fibre the carbohydrate with it is open, whatever a list shows",
          "[nutrition][label]") {
    TableFood row = kitchen::row("0f8fad5b-d9cb-469f-a165-70867728950e", "yogurt");
    row.label = LabelFacts{};
    row.label->rules = LabelRules::Eu;
    row.label->per = LabelPer::HundredGrams;
    row.label->amounts = {{LabelOnly::CHOAVL, "4.8"}, {FIBTG, "1.5"}};
    row.profile = labelProfile(*row.label);
    REQUIRE(*row.profile[CHOCDF] == Approx(6.3));
    Food food;
    food.name = "yogurt";
    food.table = row;
    food.label = row.label;
    food.labelOfRow = true;
    CHECK(Served::orThrow(compositionOf(food, 0, {}))[CHOCDF].origin == Origin::Label);
    food.stated = {{FIBTG, *Decimal::read("2.5"), {}, "supplier's analysis"}};
    const Composition stated = Served::orThrow(compositionOf(food, 0, {}));
    CHECK(stated[CHOCDF].origin == Origin::Missing);
    CHECK(stated[CHOCDF].low == Approx(0.0475));
}

TEST_CASE("what is printed per 100 g depends on no serving", "[nutrition][label]") {
    const Composition yogurt = yogurtOf(
        withYogurt(printed("FAT", "3.5"),
                   R"("per":"100g","serving_grams":"125","serving":{"amount":"1","unit":"pot"},)"));
    CHECK_FALSE(yogurt.labelGrams);
    CHECK(yogurt[FAT].perGram == Approx(0.035));
}

TEST_CASE("pots count by the serving of a label per 100 g, as finely as it is printed",
          "[nutrition][label]") {
    Kitchen kitchen =
        withYogurt(printed("FAT", "3.5"),
                   R"("per":"100g","serving_grams":"125","serving":{"amount":"1","unit":"pot"},)");
    kitchen.line(R"({"id":"y","amount":"2","piece":"pots","food":"yogurt"})");
    const Served served{kitchen};
    CHECK(served.way(0).way == Way::Label);
    CHECK(served.way(0).grams.value() == 250);
    CHECK(served.way(0).grams.uncertainty() == Approx(2 / std::sqrt(12.0)));
    // u^2 of 250 g x 3.5/100: both roundings.
    const Figure fat = served.figure(Basis::Batch, FAT);
    CHECK(fat.u == Approx(std::hypot(2.5 * 0.1 / std::sqrt(12.0), 0.035 * 2 / std::sqrt(12.0))));
}

TEST_CASE("millilitres of a label per 100 mL need no density for what they hold",
          "[nutrition][label]") {
    // 250 mL are 2.5 x what 100 mL hold, whatever a millilitre weighs.
    Kitchen kitchen = withYogurt(printed("FAT", "3.5"), kPer100ml);
    kitchen.line(R"({"id":"y","amount":"250","unit":"ml","food":"yogurt"})");
    const Served served{kitchen};
    CHECK(served.way(0).way == Way::Label);
    CHECK(served.way(0).why.basis == WayBasis::LabelDensity);
    CHECK(served.way(0).grams.value() == Approx(257.5));
    const Figure fat = served.figure(Basis::Batch, FAT);
    CHECK(fat.value == Approx(8.75));
    CHECK(fat.u == Approx(2.5 * 0.1 / std::sqrt(12.0)));
}

TEST_CASE("grams of a label per 100 mL count by its density", "[nutrition][label]") {
    Kitchen kitchen = withYogurt(printed("FAT", "3.5"), kPer100ml);
    kitchen.line(R"({"id":"y","amount":"206","unit":"g","food":"yogurt"})");
    const Figure fat = Served{kitchen}.figure(Basis::Batch, FAT);
    CHECK(fat.value == Approx(7));
    // d ln = 0.1/sqrt(12)/3.5, (0.04/1.03)/sqrt(12), and half a gram of 206 as written.
    const double relative = std::hypot(std::hypot(0.1 / 3.5, 0.04 / 1.03), 1.0 / 206);
    CHECK(fat.u == Approx(7 * relative / std::sqrt(12.0)));
}

TEST_CASE("a glass of a label per serving in mL is what is printed", "[nutrition][label]") {
    Kitchen kitchen = withYogurt(printed("FAT", "8"),
                                 R"("serving_ml":"240","serving":{"amount":"1","unit":"glass"},
                                    "density":{"g_per_ml":"1.03","within":"0.02"},)");
    kitchen.line(R"({"id":"y","amount":"3","piece":"glasses","food":"yogurt"})");
    const Served served{kitchen};
    CHECK(served.way(0).why.basis == WayBasis::LabelServings);
    const Figure fat = served.figure(Basis::Batch, FAT);
    CHECK(fat.value == Approx(24));
    CHECK(fat.u == Approx(3 * 0.1 / std::sqrt(12.0)));
}

TEST_CASE("a label's own declaration spread comes before that of the recipe",
          "[nutrition][label]") {
    Kitchen kitchen =
        withYogurt(printed("FAT", "3.5"), R"("per":"100g","declaration_spread":"0.2",)");
    kitchen.json("assumptions", R"({"declaration_spread":"0.05"})");
    const Composition yogurt = yogurtOf(kitchen);
    CHECK(uncertaintyOf(yogurt, FAT) ==
          Approx(std::hypot(0.1 / std::sqrt(12.0), 0.2 * 3.5 / std::sqrt(3.0)) / 100));
}

TEST_CASE("an amount that no rounding prints counts once the cook saw that it is printed so",
          "[nutrition][label]") {
    const auto label = [](const std::string& assent) {
        Kitchen kitchen;
        kitchen.append("foods", R"({"id":"bar","name":"bar","label":{"rules":"us",
            "serving_grams":"30","declares":[{"component":"ENERC_KCAL","printed":"52"}])" +
                                    assent + "}}");
        kitchen.line(R"({"id":"b","amount":"60","unit":"g","food":"bar"})");
        return Served::orThrow(kitchen.dossier());
    };
    CHECK(cook(label("")).error().code == ErrorCode::LabelAmountImpossible);
    const auto seen =
        cook(label(R"(,"as_printed":[{"finding":"not-lawful","about":"ENERC_KCAL 52"}])"));
    REQUIRE(seen);
    CHECK(seen->compositions.back()[ENERC_KCAL].low == Approx(51.5 / 30));
    CHECK(cook(label(R"(,"as_printed":[{"finding":"not-lawful","about":"ENERC_KCAL 53"}])"))
              .error()
              .code == ErrorCode::LabelAmountImpossible);
}

TEST_CASE("a path to sodium goes down to the printed salt", "[publish][path][label]") {
    Kitchen kitchen = withYogurt(
        printed("NACL", "1.3") + "," + printed("CHOAVL", "4.8") + "," + printed("FIBTG", "1.5"),
        kPer100g);
    kitchen.line(R"({"id":"y","amount":"200","unit":"g","food":"yogurt"})");
    const Served served{kitchen};
    const auto pathFor = [&](Component component) {
        return pathText(pathOf(
            component, Served::orThrow(figuresPer(Basis::Batch, served.dossier, served.cooked)),
            served.dossier, served.cooked));
    };
    const std::string sodium = pathFor(NA);
    INFO(sodium);
    CHECK(sodium.find("520 mg per 100 g ± 22.6 = 1.3 g × 400 mg/g  yogurt: its label, in 100 g") !=
          std::string::npos);
    CHECK(sodium.find("1.3 g per 100 g  yogurt: salt by its label") != std::string::npos);
    CHECK(sodium.find("(“1.3” stands for 1.25 to 1.35 g)") != std::string::npos);
    const std::string carbohydrate = pathFor(CHOCDF);
    INFO(carbohydrate);
    CHECK(carbohydrate.find("6.3 g per 100 g ± 0.08 = sum of the 2 steps below") !=
          std::string::npos);
    CHECK(carbohydrate.find("4.8 g per 100 g  yogurt: carbohydrate without fibre by its label") !=
          std::string::npos);
}

}  // namespace nettare
