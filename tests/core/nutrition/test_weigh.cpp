#include "core/nutrition/weigh.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;

namespace {

/// Butter, garlic and oil weighed one after the other into one bowl on a scale of 1 g.
Dossier chained() {
    Kitchen kitchen;
    const char* shown[] = {"300", "350", "365", "406"};
    for (int i = 0; i < 4; ++i)
        kitchen.append("indications",
                       R"({"id":"c)" + std::to_string(i) +
                           R"(","scale":"scale","state":"edible portion","shown":")" + shown[i] +
                           "\"}");
    for (int i = 1; i < 4; ++i)
        kitchen.append("readings", R"({"id":"r)" + std::to_string(i) + R"(","gross":"c)" +
                                       std::to_string(i) + R"(","tare":"c)" +
                                       std::to_string(i - 1) + "\"}");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    return kitchen::Served::orThrow(kitchen.dossier());
}

}  // namespace

TEST_CASE("a net has the rounding of its two indications", "[weighing]") {
    // JCGM 100:2008, 4.3.7: d/sqrt(12) each.
    const Dossier dossier = chained();
    const LinearForm net = weighed(dossier, std::size_t{0});
    CHECK(net.value() == 50);
    CHECK(net.uncertainty() == Approx(std::sqrt(2.0 / 12)));
}

TEST_CASE("chained additions add up with the uncertainty of two readings, not of six",
          "[weighing]") {
    const Dossier dossier = chained();
    const LinearForm sum = weighed(dossier, std::vector<std::size_t>{0, 1, 2});
    CHECK(sum.value() == 106);
    CHECK(sum.uncertainty() == Approx(std::sqrt(2.0 / 12)));
    // Neighbours share one indication: their correlation is -1/2.
    const LinearForm first = weighed(dossier, std::size_t{0});
    LinearForm both = first;
    both.add(weighed(dossier, std::size_t{1}));
    const double covariance =
        (both.uncertainty() * both.uncertainty() - 2 * first.uncertainty() * first.uncertainty()) /
        2;
    CHECK(covariance / (first.uncertainty() * first.uncertainty()) == Approx(-0.5));
}

TEST_CASE("a scale's calibration moves all its readings together", "[weighing]") {
    Kitchen kitchen;
    kitchen.append("scales", R"({"id":"cal","name":"cal","unit":"g","readability":"0.1",
                                 "calibration":"0.01"})");
    kitchen.append("indications", R"({"id":"g","scale":"cal","shown":"500.0","state":"cooked"})");
    kitchen.append("indications", R"({"id":"t","scale":"cal","shown":"100.0","state":"empty"})");
    kitchen.append("readings", R"({"id":"r","gross":"g","tare":"t"})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    const double rounding = std::sqrt(2.0 / 12) * 0.1;
    CHECK(weighed(dossier, std::size_t{0}).uncertainty() == Approx(std::hypot(4.0, rounding)));
    CHECK(weighed(dossier, std::vector<std::size_t>{0, 0}).uncertainty() ==
          Approx(2 * std::hypot(4.0, rounding)));
}

TEST_CASE("mean and scatter of one series are one term of the freedom", "[weighing]") {
    Kitchen kitchen;
    for (const auto& [id, net] : {std::pair{"p1", "9.6"}, {"p2", "9.9"}, {"p3", "10.1"}})
        kitchen.reading(id, net, "", "edible portion", "fine");
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["p1","p2","p3"]})");
    kitchen.line(R"({"id":"f","amount":"20","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"others"}})");
    const kitchen::Served served{kitchen};
    const Uncertainty grams = uncertaintyOf(served.way(0).grams);
    CHECK(served.way(0).readings == 3);
    const double s = std::sqrt((0.0711111 + 0.0011111 + 0.0544444) / 2);
    const double pool = 400 * s * s / 3 + 20 * s * s;
    // All three readings start from one zero of the 0.1 g scale: 20 pieces move by 20 times it.
    const double all = pool + 400 * 0.01 / 12;
    CHECK(grams.u == Approx(std::sqrt(all)).epsilon(1e-4));
    CHECK(grams.freedom == Approx(2 * all * all / (pool * pool)).epsilon(1e-4));
}

TEST_CASE("a light net on a coarse scale is noticed", "[weighing]") {
    Kitchen kitchen = Kitchen{}.reading("light", "12").reading("heavy", "40");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil","weighed":["light"]})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    CHECK(*coarseShareOf(dossier, 0) == Approx(0.408248 / 12).epsilon(1e-6));
    CHECK_FALSE(coarseShareOf(dossier, 1));
}

TEST_CASE("a tare from another scale brings that scale's calibration", "[weighing]") {
    Kitchen kitchen;
    for (const auto& [id, relative] : {std::pair{"one", "0.01"}, {"two", "0.02"}})
        kitchen.append("scales", std::string{R"({"id":")"} + id + R"(","name":")" + id +
                                     R"(","unit":"g","readability":"0.001","calibration":")" +
                                     relative + "\"}");
    kitchen.append("vessels", R"({"id":"bowl","name":"bowl","scale":"two","tare":"300"})");
    kitchen.append("indications", R"({"id":"g","scale":"one","shown":"500","state":"cooked"})");
    kitchen.append("readings", R"({"id":"r","gross":"g","vessel":"bowl"})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    const LinearForm net = weighed(dossier, std::size_t{0});
    CHECK(net.value() == 200);
    CHECK(net.uncertainty() == Approx(std::hypot(500 * 0.01, 300 * 0.02)).epsilon(1e-6));
}

TEST_CASE("a scale on ounces rounds by its own step, in grams", "[weighing]") {
    Kitchen kitchen;
    kitchen.append("scales", R"({"id":"oz","name":"oz","unit":"oz","readability":"0.05"})");
    kitchen.append("indications", R"({"id":"z","scale":"oz","shown":"0.00","state":"empty"})");
    kitchen.append("indications", R"({"id":"g","scale":"oz","shown":"8.00","state":"cooked"})");
    kitchen.append("readings", R"({"id":"r","gross":"g","tare":"z"})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    const LinearForm net = weighed(dossier, std::size_t{0});
    // NIST Handbook 44, appendix C: 1 oz = 28.349523125 g.
    CHECK(net.value() == Approx(226.796185).epsilon(1e-12));
    CHECK(net.uncertainty() == Approx(0.05 * 28.349523125 * std::sqrt(2.0 / 12)));
}

TEST_CASE("the calibration of a scale is no scatter of the pieces", "[weighing]") {
    Kitchen kitchen;
    kitchen.append("scales", R"({"id":"cal","name":"cal","unit":"g","readability":"0.1",
                                 "calibration":"0.05"})");
    kitchen.append("indications", R"({"id":"z","scale":"cal","shown":"0.0","state":"empty"})");
    for (const auto& [id, shown] : {std::pair{"p1", "199.0"}, {"p2", "201.0"}}) {
        kitchen.append("indications", std::string{R"({"id":")"} + id +
                                          R"(","scale":"cal","state":"edible portion","shown":")" +
                                          shown + "\"}");
        kitchen.append("readings",
                       std::string{R"({"id":")"} + id + R"(","gross":")" + id + R"(","tare":"z"})");
    }
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["p1","p2"]})");
    kitchen.append("series", R"({"id":"r","name":"r","kind":"ratio",
                                 "pairs":[{"before":"p2","after":"p1"}]})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    CHECK(statisticsOf(dossier, dossier.series[0], Assumptions{})->spread ==
          Approx(std::sqrt(2.0)));
    // One pair: 14 % of the lost 2 g; 5 % of 200 g would be 10 g each.
    CHECK(ratioOf(dossier, dossier.series[1], Assumptions{})->residualSpread == Approx(0.14 * 2));
}

TEST_CASE("a ratio above one carries the rounding of what went in as often", "[weighing]") {
    // 20 g of rice become 60 g, invented; 60 - 3 x 20 moves with both indications, 1 and 3 times,
    // and with their common zero 2 times: sqrt(1 + 9 + 4) d/sqrt(12).
    Kitchen kitchen = Kitchen{}.reading("raw", "20").reading("boiled", "60", "", "cooked");
    kitchen.append("series", R"({"id":"r","name":"r","kind":"ratio",
                                 "pairs":[{"before":"raw","after":"boiled"}]})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    const Dossier dossier = kitchen::Served::orThrow(kitchen.dossier());
    Assumptions sure;
    sure.pieceSpread = Decimal{0, 0};
    CHECK(ratioOf(dossier, dossier.series[0], sure)->residualSpread ==
          Approx(std::sqrt(14.0 / 12)));
}
