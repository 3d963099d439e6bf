#include "core/nutrition/enough_weighings.h"

#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "core/nutrition/judged_series.h"
#include "core/nutrition/weigh.h"
#include "kitchen.h"

// How many more weighings of a series keep what a recipe promises. Weights are invented.

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

Kitchen eightBulbs(const std::string& target, const char* use = "others") {
    Kitchen kitchen = Kitchen{}.reading("p1", "200").reading("p2", "234").reading("p3", "260");
    kitchen.append("series", R"({"id":"p","name":"fennel","kind":"per piece","of":"bulb",
        "readings":["p1","p2","p3"]})");
    kitchen.line(fmt::format(R"({{"id":"f","amount":"8","piece":"bulb","food":"fennel",
        "series":{{"id":"p","use":"{}"}}}})",
                             use));
    return kitchen.json("targets", "[" + target + "]");
}

std::string ceiling(int kcal) {
    return fmt::format(R"({{"component":"ENERC_KCAL","per":"batch","at_most":"{}"}})", kcal);
}

std::vector<EnoughWeighings> answersOf(const Kitchen& kitchen) {
    const Served served{kitchen};
    return Served::orThrow(enoughWeighings(served.dossier, served.cooked, 0));
}

EnoughWeighings answerOf(const Kitchen& kitchen) {
    const auto answers = answersOf(kitchen);
    REQUIRE(answers.size() == 1);
    return answers.front();
}

}  // namespace

TEST_CASE("weighings are counted until the interval is under the ceiling", "[nutrition]") {
    // 8 bulbs of 231.33 g at 31 kcal: 573.7 kcal, and 9.33 kcal for each gram of s beside.
    // t(2) s sqrt(64/3 + 8) = 217 kcal, t(4) s sqrt(64/5 + 8) = 118, t(3) s sqrt(64/4 + 8) = 145.
    const EnoughWeighings two = answerOf(eightBulbs(ceiling(700)));
    CHECK(two.enough == Enough::WithMore);
    CHECK(two.more == 2);
    CHECK(two.room == Approx(126.3).epsilon(0.001));
    CHECK(two.halfWidth == Approx(217.4).epsilon(0.005));
    CHECK(answerOf(eightBulbs(ceiling(800))).enough == Enough::Already);
    CHECK(answerOf(eightBulbs(ceiling(570))).enough == Enough::ValueMisses);
    // t(inf) s sqrt(8) = 51.7 kcal stay, however many are weighed.
    const EnoughWeighings none = answerOf(eightBulbs(ceiling(624)));
    CHECK(none.enough == Enough::NoneSuffices);
    CHECK(none.least == Approx(52).epsilon(0.01));
}

TEST_CASE("the recipe and the series alone ask for as many weighings", "[nutrition]") {
    const int kcal = GENERATE(650, 660, 675, 690, 705);
    const Kitchen kitchen = eightBulbs(ceiling(kcal));
    const EnoughWeighings recipe = answerOf(kitchen);
    const Served served{kitchen};
    const auto statistics =
        Served::orThrow(statisticsOf(served.dossier, served.dossier.series.front(), Assumptions{}));
    const double grams = recipe.room / 0.31;
    const auto alone = weighingsUntil(statistics, 8, grams, studentLaw().coverage);
    REQUIRE(alone.has_value());
    CHECK(recipe.more == Approx(*alone).margin(1).epsilon(0.02));
}

TEST_CASE("weighed as said the target is kept, and with one fewer it is not", "[nutrition]") {
    const EnoughWeighings answer = answerOf(eightBulbs(ceiling(670)));
    REQUIRE(answer.enough == Enough::WithMore);
    REQUIRE(answer.more % 2 == 0);
    const auto after = [&](int more) {
        Kitchen kitchen = eightBulbs(ceiling(670));
        std::string ids = R"("p1","p2","p3")";
        for (int i = 0; i < more; ++i) {
            // Mean and spread of 200, 234 and 260 g: 231.333 and 30.089 g.
            const std::string id = fmt::format("more{}", i);
            kitchen.reading(id, i % 2 == 0 ? "201.244" : "261.422");
            ids += fmt::format(R"(,"{}")", id);
        }
        kitchen.json("series", R"([{"id":"p","name":"fennel","kind":"per piece","of":"bulb",
            "readings":[)" + ids + "]}]");
        const Served weighed{kitchen};
        return intervalOf(weighed.figure(Basis::Batch, ENERC_KCAL)).halfWidth;
    };
    CHECK(after(answer.more) <= answer.room * 1.0001);
    CHECK(after(answer.more - 2) > answer.room);
}

TEST_CASE("of the pieces that are used no more are weighed than there are", "[nutrition]") {
    // All eight on the scale: only the display and its zero stay.
    const EnoughWeighings all = answerOf(eightBulbs(ceiling(584), "among"));
    CHECK(all.enough == Enough::WithMore);
    CHECK(all.more == 5);
    CHECK(all.least < 5);
}

TEST_CASE("a floor and a ratio are answered too", "[nutrition]") {
    const EnoughWeighings floor =
        answerOf(eightBulbs(R"({"component":"ENERC_KCAL","per":"batch","at_least":"450"})"));
    CHECK(floor.enough == Enough::WithMore);
    CHECK(floor.room == Approx(123.7).epsilon(0.001));

    CHECK(answersOf(eightBulbs(R"({"component":"SUGAD","per":"batch","at_most":"30"})")).empty());
    Kitchen trimmed = Kitchen{}.reading("b", "300").reading("a", "210");
    trimmed.reading("b2", "280").reading("a2", "202");
    trimmed.reading("w", "900", "", "as purchased");
    trimmed.append("series", R"({"id":"p","name":"trim","kind":"ratio",
        "pairs":[{"before":"b","after":"a"},{"before":"b2","after":"a2"}]})");
    trimmed.line(
        R"({"id":"f","amount":"4","piece":"bulb","food":"fennel","weighed":["w"],"trim":"p"})");
    const EnoughWeighings ratio = answerOf(trimmed.json("targets", "[" + ceiling(205) + "]"));
    CHECK(ratio.enough == Enough::WithMore);
    CHECK(ratio.more >= 1);
    CHECK(ratio.more < 20);
}

TEST_CASE("one reading pooled with an earlier series is extended by that one's spread",
          "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("p1", "231");
    kitchen.append("series", R"({"id":"p","name":"fennel","kind":"per piece","of":"bulb",
        "readings":["p1"],"pooled_with":{"name":"2025","s":"8","nu":"11"}})");
    kitchen.line(R"({"id":"f","amount":"8","piece":"bulb","food":"fennel",
        "series":{"id":"p","use":"others"}})");
    kitchen.json("targets", "[" + ceiling(595) + "]");
    // 572.9 kcal; t(11) 8 g sqrt(64/1 + 8) = 46 kcal now, at last 1.96 x 8 g x sqrt(8) = 14 kcal.
    const EnoughWeighings answer = answerOf(kitchen);
    CHECK(answer.enough == Enough::WithMore);
    CHECK(answer.least == Approx(14).epsilon(0.05));
    CHECK(answer.more < 10);
}

TEST_CASE("a series of several pieces a reading is extended by such readings", "[nutrition]") {
    Kitchen kitchen = Kitchen{};
    for (const auto& [id, grams] :
         {std::pair{"a", "100"}, std::pair{"b", "102"}, std::pair{"c", "101"}})
        kitchen.reading(id, grams, R"(,"pieces":"10")");
    kitchen.append("series", R"({"id":"p","name":"fennel","kind":"per piece","of":"bulb",
        "readings":["a","b","c"]})");
    kitchen.line(R"({"id":"f","amount":"500","piece":"bulb","food":"fennel",
        "series":{"id":"p","use":"others"}})");
    kitchen.json("targets", "[" + ceiling(1580) + "]");
    const EnoughWeighings answer = answerOf(kitchen);
    // The display of 1 g is a tenth of that for each piece, and stays so.
    CHECK(answer.enough == Enough::WithMore);
    CHECK(answer.least < answer.halfWidth / 2);
}
