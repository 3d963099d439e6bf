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

Kitchen sauce() {
    Kitchen kitchen;
    kitchen.json("makes", R"({"pieces":"4","piece":"spoon","plural":"spoons"})");
    kitchen.line(R"({"id":"oil","amount":"2","unit":"tbsp","food":"oil"})");
    kitchen.line(R"({"id":"sugar","amount":"3","unit":"tsp","food":"sugar"})");
    return kitchen;
}

Kitchen withSauce(const std::string& line) {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})");
    kitchen.line(line).kept("sauce", sauce());
    return kitchen;
}

}  // namespace

TEST_CASE("a kept recipe used whole equals its lines written out", "[nutrition]") {
    const Served whole{withSauce(R"({"id":"s","amount":"1","piece":"batch","food":"sauce"})")};
    const Served written{sauce()};
    for (const Component component : {ENERC_KCAL, FAT, SUGAR, SUGAD, CHOCDF}) {
        CAPTURE(factsOf(component).tagname);
        const Figure a = whole.figure(Basis::Batch, component);
        const Figure b = written.figure(Basis::Batch, component);
        CHECK(a.value == Approx(b.value).epsilon(1e-14));
        CHECK(a.u == Approx(b.u).epsilon(1e-12));
        CHECK(a.complete() == b.complete());
    }
}

TEST_CASE("a kept recipe used by pieces or by weight gives its share", "[nutrition]") {
    const double all = Served{sauce()}.figure(Basis::Batch, ENERC_KCAL).value;
    const Served pieces{withSauce(R"({"id":"s","amount":"3","piece":"spoons","food":"sauce"})")};
    CHECK(pieces.figure(Basis::Batch, ENERC_KCAL).value == Approx(all * 3 / 4));
    // 27 g of oil and 12.6 g of sugar: 10 g are 10/39.6 of it.
    const Served grams{withSauce(R"({"id":"s","amount":"10","unit":"g","food":"sauce"})")};
    CHECK(grams.figure(Basis::Batch, ENERC_KCAL).value == Approx(all * 10 / 39.6));
}

TEST_CASE("a dish and its sauce share one assumption for one spoon", "[nutrition]") {
    Kitchen loose = sauce().json("assumptions", R"({"volume_spread":"0.5"})");
    Kitchen dish;
    dish.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})");
    dish.line(R"({"id":"s","amount":"1","piece":"batch","food":"sauce"})").kept("sauce", loose);
    dish.line(R"({"id":"more","amount":"2","unit":"tbsp","food":"oil"})");
    // 2 x 27 g of oil at 7 %, and 3 tsp of sugar with a published spread.
    const Figure fat = Served{dish}.figure(Basis::Batch, FAT);
    CHECK(fat.u == Approx(0.07 * 54));
}

TEST_CASE("a kept recipe's amount is as uncertain as it is written", "[nutrition]") {
    const auto grams = [](const std::string& line) {
        return Served{withSauce(line)}.cooked.lines[0].eaten;
    };
    CHECK(grams(R"({"id":"s","amount":"10","unit":"g","food":"sauce"})").uncertainty() ==
          Approx(1 / std::sqrt(12.0)));
    // Two to three of four spoons of 39.6 g: a rectangle of 9.9 g beside what 2.5 have.
    const LinearForm range = grams(R"({"id":"s","amount":"2-3","piece":"spoons","food":"sauce"})");
    const LinearForm middle = grams(R"({"id":"s","amount":"2.5","piece":"spoons","food":"sauce"})");
    CHECK(range.value() == Approx(middle.value()));
    CHECK(range.uncertainty() == Approx(std::hypot(middle.uncertainty(), 9.9 / std::sqrt(12.0))));
}

TEST_CASE("a food that a dish and its sauce share is one source", "[nutrition]") {
    Kitchen kitchen = withSauce(R"({"id":"s","amount":"1","piece":"batch","food":"sauce"})");
    kitchen.line(R"({"id":"more","amount":"2","unit":"tbsp","food":"oil"})");
    const Served served{kitchen};
    // Twice the same spoons: the measure's assumed 7 % acts on both, so uncertainties add, not
    // squares.
    const double once = 0.07 * 2 * 13.5 * 8.84;
    double shared = 0;
    const auto figures = figuresPer(Basis::Batch, served.dossier, served.cooked);
    for (const Contribution& part :
         contributionsTo(ENERC_KCAL, figures->block, served.cooked.compositions))
        if (part.source.key.kind == SourceKind::MeasureAssumed) shared += std::sqrt(part.share());
    CHECK(shared == Approx(2 * once));
}

TEST_CASE("scaling a batch scales every value and never enlarges relative uncertainty",
          "[nutrition]") {
    const auto batch = [](const char* oil, const char* sugar) {
        Kitchen kitchen;
        kitchen.line(std::string{R"({"id":"o","unit":"tbsp","food":"oil","amount":")"} + oil +
                     "\"}");
        kitchen.line(std::string{R"({"id":"s","unit":"tsp","food":"sugar","amount":")"} + sugar +
                     "\"}");
        return Served{kitchen};
    };
    const Served once = batch("1", "3");
    const Served twice = batch("2", "6");
    for (const Component component : {ENERC_KCAL, FAT, SUGAR, CHOCDF}) {
        const Figure a = once.figure(Basis::Batch, component);
        const Figure b = twice.figure(Basis::Batch, component);
        CHECK(b.value == Approx(2 * a.value));
        CHECK(b.u / b.value <= a.u / a.value * (1 + 1e-12));
    }
}

TEST_CASE("splitting a line with one source changes nothing", "[nutrition]") {
    Kitchen whole = Kitchen{}.line(R"({"id":"o","amount":"4","unit":"tbsp","food":"oil"})");
    Kitchen halves = Kitchen{}.line(R"({"id":"a","amount":"1","unit":"tbsp","food":"oil"})");
    halves.line(R"({"id":"b","amount":"3","unit":"tbsp","food":"oil"})");
    const Figure one = Served{whole}.figure(Basis::Batch, ENERC_KCAL);
    const Figure two = Served{halves}.figure(Basis::Batch, ENERC_KCAL);
    CHECK(two.value == Approx(one.value));
    CHECK(two.u == Approx(one.u));
}

TEST_CASE("the shares of a budget sum to one", "[nutrition]") {
    const Served served{sauce()};
    const auto figures = figuresPer(Basis::Portion, served.dossier, served.cooked);
    for (const Component component : {ENERC_KCAL, FAT, SUGAR}) {
        double sum = 0;
        for (const Contribution& part :
             contributionsTo(component, figures->block, served.cooked.compositions))
            sum += part.share();
        const double u = (*figures)[component].u;
        CHECK(sum == Approx(u * u));
    }
}
