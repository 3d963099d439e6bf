#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/budget.h"
#include "core/nutrition/figures.h"
#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// 27 g of oil and 12.6 g of sugar that make four spoons.
Kitchen dressing() {
    Kitchen kitchen;
    kitchen.json("makes", R"({"pieces":"4","piece":"spoon","plural":"spoons"})");
    kitchen.line(R"({"id":"oil","amount":"2","unit":"tbsp","food":"oil"})");
    return kitchen.line(R"({"id":"sugar","amount":"3","unit":"tsp","food":"sugar"})");
}

/// The same, cooked down to 30 g.
Kitchen glaze() {
    return dressing().reading("pan", "30", "", "cooked").json("cooked", R"({"readings":["pan"]})");
}

Kitchen dishOf(const std::string& line, const Kitchen& kept) {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"kept","name":"kept","recipe":"kept"})");
    return kitchen.line(line).kept("kept", kept);
}

std::string line(const std::string& amount) {
    return R"({"id":"k","food":"kept",)" + amount + "}";
}

double fat(const Kitchen& kitchen) {
    return Served{kitchen}.figure(Basis::Batch, FAT).value;
}

/// Bulbs that were weighed one by one, and two others by their mean. `last` is what one weighed.
Kitchen withBulbs(Kitchen kitchen, const std::string& last = "212") {
    kitchen.reading("b1", "190").reading("b2", "201").reading("b3", last);
    kitchen.append("series", R"({"id":"bulbs","name":"bulbs","of":"bulb","kind":"per piece",)"
                             R"("readings":["b1","b2","b3"]})");
    return kitchen.line(R"({"id":"bulbs","amount":"2","piece":"bulb","food":"fennel",)"
                        R"("series":{"id":"bulbs","use":"others"}})");
}

Kitchen withOil(Kitchen kitchen) {
    kitchen.append(
        "foods",
        R"({"id":"brand","name":"brand oil","label":{"rules":"us","serving_grams":"14",)"
        R"("serving":{"amount":"1","unit":"tbsp"},"declares":[{"component":"ENERC_KCAL","printed":"120"},)"
        R"({"component":"FAT","printed":"14"}]}})");
    return kitchen.line(R"({"id":"brand","amount":"20","unit":"g","food":"brand"})");
}

/// A weighing with its time, on a scale that was checked.
Kitchen withChecked(Kitchen kitchen, const std::string& at, const std::string& scale = "checked") {
    kitchen.append("scales", R"({"id":")" + scale +
                                 R"(","name":"checked scale","unit":"g","readability":"1",)"
                                 R"("calibration":"0.01"})");
    const auto indication = [&](const std::string& id, const std::string& shown) {
        kitchen.append("indications", R"({"id":")" + id + R"(","scale":")" + scale +
                                          R"(","shown":")" + shown +
                                          R"(","state":"edible portion")" +
                                          (at.empty() ? "" : R"(,"at":")" + at + "\"") + "}");
    };
    indication("tare", "10");
    indication("gross", "110");
    kitchen.append("readings", R"({"id":"net","gross":"gross","tare":"tare"})");
    return kitchen.line(
        R"({"id":"net","amount":"1","piece":"bulb","food":"fennel","weighed":["net"]})");
}

/// How many sources of the kind the water of the batch has, and the sum of their c u.
std::pair<int, double> sourcesOf(SourceKind kind, const Kitchen& kitchen, Component component) {
    const Served served{kitchen};
    const auto figures = figuresPer(Basis::Batch, served.dossier, served.cooked);
    std::pair<int, double> found{0, 0};
    for (const Contribution& part :
         contributionsTo(component, figures->block, served.cooked.compositions))
        if (part.source.key.kind == kind) {
            ++found.first;
            found.second += std::sqrt(part.share());
        }
    return found;
}

constexpr auto kNoon = "2026-05-16T12:00:00+02:00";

}  // namespace

TEST_CASE(
    "a kept recipe is used whole, by weight, by pieces or as weighed, of what it weighed cooked",
    "[keptrecipes]") {
    const double all = 27;
    CHECK(fat(dishOf(line(R"("amount":"1","piece":"batch")"), glaze())) == Approx(all));
    CHECK(fat(dishOf(line(R"("amount":"3","piece":"spoons")"), glaze())) == Approx(all * 3 / 4));
    // Without a cooked weight 10 g are of 39.6 g, with it of 30 g.
    CHECK(fat(dishOf(line(R"("amount":"10","unit":"g")"), dressing())) == Approx(all * 10 / 39.6));
    CHECK(fat(dishOf(line(R"("amount":"10","unit":"g")"), glaze())) == Approx(all * 10 / 30));
    Kitchen weighed = dishOf(line(R"("amount":"1","piece":"spoon","weighed":["net"])"), glaze());
    CHECK(fat(weighed.reading("net", "12")) == Approx(all * 12 / 30));
}

TEST_CASE("what a kept recipe lost in its own cooking is water that the dish does not have",
          "[keptrecipes]") {
    Kitchen stewed;
    stewed.line(R"({"id":"fennel","amount":"200","unit":"g","food":"fennel"})");
    stewed.reading("pot", "150", "", "cooked").json("cooked", R"({"readings":["pot"]})");
    const Served dish{dishOf(line(R"("amount":"75","unit":"g")"), stewed)};
    CHECK(dish.cooked.eaten.used.value() == Approx(75));
    // 200 g hold 180.42 g of water; 50 g boiled away; half of the rest is used.
    CHECK(dish.figure(Basis::Batch, WATER).value == Approx((180.42 - 50) / 2));
    CHECK(dish.figure(Basis::Batch, FIBTG).value == Approx(3.1));
}

TEST_CASE("a kept recipe of a kept recipe equals all lines written out", "[keptrecipes]") {
    Kitchen middle = dishOf(line(R"("amount":"1","piece":"batch")"), dressing());
    middle.line(R"({"id":"more","amount":"1","unit":"tbsp","food":"oil"})");
    Kitchen outer;
    outer.append("foods", R"({"id":"middle","name":"middle","recipe":"middle"})");
    outer.line(R"({"id":"m","amount":"1","piece":"batch","food":"middle"})");
    outer.kept("middle", middle).kept("kept", dressing());
    const Served nested{outer};
    const Served written{
        dressing().line(R"({"id":"more","amount":"1","unit":"tbsp","food":"oil"})")};
    for (const Component component : {ENERC_KCAL, FAT, SUGAR, CHOCDF, NA}) {
        CAPTURE(factsOf(component).tagname);
        const Figure a = nested.figure(Basis::Batch, component);
        const Figure b = written.figure(Basis::Batch, component);
        CHECK(a.value == Approx(b.value).epsilon(1e-14));
        CHECK(a.u == Approx(b.u).epsilon(1e-12));
        CHECK(a.freedom == Approx(b.freedom));
    }
}

TEST_CASE("a series of the dish that its kept recipe uses too is one source", "[keptrecipes]") {
    const auto whole = line(R"("amount":"1","piece":"batch")");
    const auto once = sourcesOf(SourceKind::SeriesMean, withBulbs(Kitchen{}), WATER);
    REQUIRE(once.first == 1);
    const auto both =
        sourcesOf(SourceKind::SeriesMean, withBulbs(dishOf(whole, withBulbs(Kitchen{}))), WATER);
    CHECK(both.first == 1);
    CHECK(both.second == Approx(2 * once.second));
    // The pieces are others each time.
    CHECK(
        sourcesOf(SourceKind::SeriesScatter, withBulbs(dishOf(whole, withBulbs(Kitchen{}))), WATER)
            .first == 2);
    // One gram more, and it is another series.
    CHECK(sourcesOf(SourceKind::SeriesMean, withBulbs(dishOf(whole, withBulbs(Kitchen{}, "213"))),
                    WATER)
              .first == 2);
}

TEST_CASE("a label of the dish that its kept recipe uses too is one source", "[keptrecipes]") {
    const auto whole = line(R"("amount":"1","piece":"batch")");
    for (const SourceKind kind : {SourceKind::LabelServing, SourceKind::Composition}) {
        const auto once = sourcesOf(kind, withOil(Kitchen{}), FAT);
        const auto both = sourcesOf(kind, withOil(dishOf(whole, withOil(Kitchen{}))), FAT);
        CHECK(once.first == 1);
        CHECK(both.first == 1);
        CHECK(both.second == Approx(2 * once.second));
    }
}

TEST_CASE("a scale is off alike for the dish and its kept recipe", "[keptrecipes]") {
    const auto whole = line(R"("amount":"1","piece":"batch")");
    const auto of = [&](SourceKind kind, const std::string& at, const std::string& scale) {
        return sourcesOf(kind, withChecked(dishOf(whole, withChecked(Kitchen{}, kNoon)), at, scale),
                         WATER)
            .first;
    };
    CHECK(of(SourceKind::Calibration, "2026-05-17T12:00:00+02:00", "checked") == 1);
    CHECK(of(SourceKind::Calibration, "2026-05-17T12:00:00+02:00", "another") == 2);
    // Gross and tare: one moment at the scale is rounded once, another one or an unknown one anew.
    CHECK(of(SourceKind::Rounding, kNoon, "checked") == 2);
    CHECK(of(SourceKind::Rounding, "2026-05-17T12:00:00+02:00", "checked") == 4);
    CHECK(of(SourceKind::Rounding, "", "checked") == 4);
}
