#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// A series of two pairs: 100 g of dry beans came out at 230 and 250 g.
Kitchen soaked() {
    Kitchen kitchen = Kitchen{}.reading("d1", "100").reading("d2", "100");
    kitchen.reading("c1", "230", "", "cooked").reading("c2", "250", "", "cooked");
    kitchen.reading("dish", "480", "", "cooked").reading("bag", "200");
    return kitchen.append("series", R"({"id":"boil","name":"boiled","kind":"ratio",
        "pairs":[{"before":"d1","after":"c1"},{"before":"d2","after":"c2"}]})");
}

std::string line(const std::string& more) {
    return R"({"id":"f","food":"fennel","amount":"200","unit":"g",)" + more + "}";
}

}  // namespace

TEST_CASE("a yield by the cook's series brings grams to the state of the food's values",
          "[nutrition]") {
    Kitchen kitchen = soaked();
    kitchen.line(line(R"("weighed":["bag"],"yield":{"to":"cooked","series":"boil"})"));
    const Served served{kitchen};
    CHECK(served.way(0).yielded);
    CHECK(served.way(0).grams.value() == Approx(480));
    // s_e = sqrt(10^2 + 10^2) for lots of 100 g: the ratio 2 x s_e / sqrt(2), this lot of 200 g
    // sqrt(2) x s_e; 1 g steps beside it.
    const double s = std::sqrt(200.0);
    CHECK(served.way(0).grams.uncertainty() ==
          Approx(std::hypot(std::sqrt(2.0) * s, std::sqrt(2.0) * s)).epsilon(0.01));
}

TEST_CASE("a yield against its series divides", "[nutrition]") {
    Kitchen kitchen = soaked();
    kitchen.line(line(R"("weighed":["dish"],"yield":{"to":"dry","series":"boil","inverse":true})"));
    CHECK(Served{kitchen}.way(0).grams.value() == Approx(200));
}

TEST_CASE("what was weighed cooked is not cooked again", "[nutrition]") {
    Kitchen kitchen = soaked();
    kitchen.line(line(R"("weighed":["dish"],"yield":{"to":"cooked","series":"boil"})"));
    const Served served{kitchen};
    CHECK(served.way(0).grams.value() == 480);
    CHECK_FALSE(served.way(0).yielded);
    // The weight as written is of the bag.
    const auto& ways = served.cooked.lines[0].ways.ways;
    REQUIRE(ways.size() == 2);
    CHECK(ways[1].grams.value() == Approx(480));
    CHECK(ways[1].yielded);
}

TEST_CASE("a yield by a factor carries its half-width", "[nutrition]") {
    const Served served{Kitchen{}.line(
        R"({"id":"f","amount":"2","piece":"can","each":{"amount":"400","unit":"g"},"food":"fennel",
            "yield":{"to":"drained","factor":"0.6","within":"0.03","reason":"drained weight 240 g"}})")};
    CHECK(served.way(0).way == Way::Label);
    CHECK(served.way(0).yielded);
    CHECK(*served.way(0).why.yielded == 0.6);
    CHECK(served.way(0).grams.value() == Approx(480));
    CHECK(served.way(0).grams.uncertainty() ==
          Approx(std::hypot(800 * 0.06 / std::sqrt(12.0), 0.6 * 2 / std::sqrt(12.0))));
}

TEST_CASE("a measure of the table is in the state of its row already", "[nutrition]") {
    Kitchen kitchen = soaked();
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel",
                     "yield":{"to":"cooked","series":"boil"}})");
    CHECK(Served{kitchen}.way(0).grams.value() == 468);
    CHECK_FALSE(Served{kitchen}.way(0).yielded);
}

TEST_CASE("a whole lot that was weighed does not scatter", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("one", "100").reading("two", "104");
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["one","two"]})");
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"among"}})");
    kitchen.line(R"({"id":"g","amount":"3","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"among"}})");
    const Served served{kitchen};
    CHECK(served.way(0).wholeLot);
    for (const LinearForm::Term& term : served.way(0).grams.terms())
        CHECK(term.source.key.kind == SourceKind::Rounding);
    CHECK_FALSE(served.way(1).wholeLot);
    // N (N - n) s^2 / n with s = sqrt(8): 3 x 1 x 8 / 2; the two readings bring their rounding.
    CHECK(served.way(1).grams.uncertainty() ==
          Approx(std::sqrt(12 + 1.5 * 1.5 * (1 + 1 + 4) / 12)).epsilon(1e-9));
}

TEST_CASE("one weighed lot of one piece rests on no assumed spread", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("one", "218");
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["one"]})");
    kitchen.line(R"({"id":"f","amount":"1","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"among"}})");
    CHECK(Served{kitchen}.way(0).wholeLot);
    CHECK_FALSE(Served{kitchen}.way(0).spreadAssumed);
}
