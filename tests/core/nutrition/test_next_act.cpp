#include <algorithm>
#include <catch2/catch.hpp>

#include "core/nutrition/next_act.h"
#include "kitchen.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

NextAct nextFor(const Served& served, Component component = ENERC_KCAL,
                Basis basis = Basis::Piece) {
    return Served::orThrow(nextAct(component, basis, served.dossier, served.cooked));
}

std::string actsOf(const NextAct& next, const Dossier& dossier) {
    std::string acts;
    for (const ActOutcome& outcome : next.outcomes) acts += actText(outcome.act, dossier) + "\n";
    return acts;
}

const ActOutcome* outcomeOf(const NextAct& next, Act act) {
    const auto found = std::ranges::find(next.outcomes, act, &ActOutcome::act);
    return found == next.outcomes.end() ? nullptr : &*found;
}

Kitchen withPaste() {
    Kitchen kitchen;
    return kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"70"}]}})");
}

const char* const kPrawnSeries = R"({"id":"p","name":"prawns","kind":"per piece","of":"bulb",
    "readings":["p1","p2","p3"]})";

}  // namespace

TEST_CASE("the line whose measure is least sure is weighed next", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel"})");
    kitchen.line(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})");
    const Served served{kitchen};
    const NextAct next = nextFor(served);
    REQUIRE(next.best() != nullptr);
    CHECK(actText(next.best()->act, served.dossier) == "Weigh the fennel");
    CHECK(outcomeText(ENERC_KCAL, next) == "would narrow ± 6 kcal to ± 4");
    // The oil comes next, and two bulbs alone tell less than nothing: t of one degree of freedom.
    CHECK(actsOf(next, served.dossier) ==
          "Weigh the fennel\nWeigh two bulbs of fennel, one by one\nWeigh the oil\n");
}

TEST_CASE("weighing a line leaves the rounding of the first scale", "[nutrition]") {
    const Kitchen kitchen = Kitchen{}.line(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})");
    const NextAct next = nextFor(Served{kitchen}, FAT, Basis::Batch);
    REQUIRE(next.outcomes.size() == 1);
    // 27 g at 7 % of 8 degrees of freedom; then two displays of 1 g.
    CHECK(next.halfWidth == Approx(2.306004 * 0.07 * 27));
    CHECK(next.best()->halfWidth == Approx(1.96 * std::sqrt(2.0 / 12)));
}

TEST_CASE("a label's own rounding is no work for a scale", "[nutrition]") {
    Kitchen kitchen = withPaste().reading("r", "33.0", "", "edible portion", "fine");
    kitchen.line(R"({"id":"a","amount":"2","unit":"tbsp","food":"paste","weighed":["r"]})");
    const NextAct next = nextFor(Served{kitchen});
    CHECK(next.outcomes.empty());
    CHECK(next.best() == nullptr);
    CHECK(outcomeText(ENERC_KCAL, next) ==
          "the label's own rounding is the larger part and no scale can narrow it");
}

TEST_CASE("what narrows a little says what stays", "[nutrition]") {
    Kitchen kitchen = withPaste().line(R"({"id":"a","amount":"70","unit":"g","food":"paste"})");
    kitchen.line(R"({"id":"o","amount":"1 1/2","unit":"tsp","food":"oil"})");
    const Served served{kitchen};
    const NextAct next = nextFor(served);
    REQUIRE(next.best() != nullptr);
    CHECK(actText(next.best()->act, served.dossier) == "Weigh the oil");
    CHECK(
        outcomeText(ENERC_KCAL, next)
            .ends_with("; the label's own rounding is the larger part and no scale can narrow it"));
}

TEST_CASE("of a series that is weighed in lots, two more lots are asked for", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("p1", "600").reading("p2", "702").reading("p3", "780");
    kitchen.append("series", kPrawnSeries);
    kitchen.line(R"({"id":"f","amount":"8","piece":"bulb","food":"fennel",
        "series":{"id":"p","use":"others"}})");
    Served served{kitchen};
    const Act more{ActKind::WeighTwoMore, 0};
    for (const std::size_t reading : served.dossier.series.front().readings)
        served.dossier.readings[reading].pieces = 3;
    CHECK(actText(more, served.dossier) == "Weigh two more lots of 3 bulbs of fennel");
    served.dossier.recipes.front().pieceSeries = 0;
    CHECK(actText({ActKind::WeighPieces, 0}, served.dossier) ==
          "Weigh two more lots of 3 finished pieces");
    served.dossier.recipes.front().lines.front().name = "bulb";
    CHECK(actText(more, served.dossier) == "Weigh two more lots of 3 bulbs");
    served.dossier.recipes.front().lines.front().name = "fennel";
    served.dossier.series.front().kind = SeriesKind::Ratio;
    CHECK(actText(more, served.dossier) == "Weigh two more lots of fennel, before and after");
}

TEST_CASE("two more pieces of a series narrow it, until their scatter is left", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("p1", "200").reading("p2", "234").reading("p3", "260");
    kitchen.append("series", kPrawnSeries);
    kitchen.line(R"({"id":"f","amount":"8","piece":"bulb","food":"fennel",
        "series":{"id":"p","use":"others"}})");
    const Served served{kitchen};
    const NextAct next = nextFor(served);
    const ActOutcome* more = outcomeOf(next, {ActKind::WeighTwoMore, 0});
    REQUIRE(more != nullptr);
    CHECK(actText(more->act, served.dossier) == "Weigh two more bulbs of fennel");
    // t(2) (8^2/3 + 8) against t(4) (8^2/5 + 8), and the zero of the scale.
    CHECK(more->halfWidth / next.halfWidth ==
          Approx(2.776445 / 4.302653 * std::sqrt(20.8 / 29.333333)).epsilon(0.01));
}

TEST_CASE("a food without a label may be read from its package", "[nutrition]") {
    TableFood tahini = kitchen::row("1", "tahini");
    kitchen::set(tahini, ENERC_KCAL, 595);
    kitchen::set(tahini, FAT, 53.8);
    tahini.profile.spread[indexOf(FAT)] = {{}, 0, 0.2};
    Kitchen kitchen = Kitchen{}.row("tahini", tahini).reading("r", "150");
    kitchen.line(R"({"id":"t","amount":"1","piece":"lot","food":"tahini","weighed":["r"]})");
    const Served served{kitchen};
    const NextAct next = nextFor(served, FAT);
    REQUIRE(next.best() != nullptr);
    CHECK(actText(next.best()->act, served.dossier) == "Read the label of the tahini");
    CHECK(nextFor(served, MG).outcomes.empty());
}

TEST_CASE("what the recipe leaves open can be counted, weighed and said", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "400").reading("left", "40", "", "residue");
    kitchen.json("makes", R"({"pieces":"4-6","piece":"skewer","plural":"skewers"})");
    kitchen.line(R"({"id":"f","amount":"1","piece":"lot","food":"fennel","weighed":["r"]})");
    kitchen.line(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})");
    kitchen.json("residues", R"([{"unknown":true,"called":"frying oil","readings":["left"]}])");
    const Served served{kitchen};
    const auto acts = [&](Basis basis) {
        const NextAct next = nextFor(served, ENERC_KCAL, basis);
        return actsOf(next, served.dossier);
    };
    CHECK(acts(Basis::Batch) == "Say what frying oil left over is made of\nWeigh the oil\n");
    CHECK(acts(Basis::Piece) ==
          "Say what frying oil left over is made of\nCount the skewers\nWeigh the oil\n");
    CHECK(acts(Basis::Hundred).find("Weigh the dish after cooking\n") != std::string::npos);
}

TEST_CASE("the share of any one piece is told by pieces weighed one by one", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "400").reading("p1", "38").reading("p2", "42");
    kitchen.reading("p3", "40");
    kitchen.append("series", R"({"id":"p","name":"done","kind":"per piece","of":"piece",
        "readings":["p1","p2","p3"]})");
    kitchen.line(R"({"id":"f","amount":"1","piece":"lot","food":"fennel","weighed":["r"]})");
    kitchen.json("makes", R"({"pieces":"10","piece":"piece","plural":"pieces","weighed":"p"})");
    Dossier dossier = Served::orThrow(kitchen.dossier());
    const Cooked cooked = Served::orThrow(cook(dossier, Meaning::AnyPiece));
    const auto next = nextAct(ENERC_KCAL, Basis::Piece, dossier, cooked);
    REQUIRE(next);
    REQUIRE(next->best() != nullptr);
    CHECK(actText(next->best()->act, dossier) == "Weigh two more finished pieces, one by one");
    CHECK(next->best()->halfWidth / next->halfWidth == Approx(2.776445 / 4.302653).epsilon(0.02));
    CHECK(outcomeText(ENERC_KCAL, *next).find("share of one piece") == std::string::npos);
}

TEST_CASE("a figure that cannot be had has no next act", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.line(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})");
    kitchen.json("portion", R"({"grams":"100"})");
    const Served served{kitchen};
    const auto next = nextAct(FAT, Basis::Portion, served.dossier, served.cooked);
    REQUIRE_FALSE(next);
    CHECK(next.error().code == ErrorCode::CookedWeightMissing);
}

TEST_CASE("trying acts on any recipe changes nothing of it", "[nutrition]") {
    RandomRecipes recipes{41, RandomRecipes::Draw::AllWays};
    std::size_t acts = 0;
    for (int i = 0; i < 200; ++i) {
        const auto dossier = recipes.next().dossier();
        REQUIRE(dossier);
        const auto cooked = cook(*dossier);
        if (!cooked) continue;
        const auto once = nextAct(ENERC_KCAL, Basis::Piece, *dossier, *cooked);
        REQUIRE(once);
        acts += once->outcomes.size();
        CHECK(std::ranges::is_sorted(once->outcomes, {}, &ActOutcome::halfWidth));
        // The last act leaves the copy as the first one found it: any order gives the same.
        const auto again = nextAct(ENERC_KCAL, Basis::Piece, *dossier, *cooked);
        REQUIRE(again->outcomes.size() == once->outcomes.size());
        for (std::size_t k = 0; k < once->outcomes.size(); ++k)
            CHECK(again->outcomes[k].halfWidth == once->outcomes[k].halfWidth);
    }
    CHECK(acts > 300);
}
