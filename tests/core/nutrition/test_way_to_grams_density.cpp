#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// A food of the table that is measured in pieces alone.
TableFood unmeasured() {
    TableFood food = kitchen::row("90001", "invented oil");
    kitchen::set(food, Component::ENERC_KCAL, 884);
    food.measures = {{1, "bottle", "", 900, 0, {}}};
    return food;
}

constexpr const char* kStated =
    R"("density":{"g_per_ml":"0.92","within":"0.01","reason":"vegetable oils: median of 12 rows"})";

std::string spoons(const char* id, const char* amount, const std::string& more = kStated) {
    return std::string{R"({"id":")"} + id + R"(","amount":")" + amount +
           R"(","unit":"tbsp","food":"new-oil",)" + more + "}";
}

Kitchen unmeasuredKitchen() {
    return Kitchen{}.row("new-oil", unmeasured());
}

}  // namespace

TEST_CASE("a volume is never taken for water", "[nutrition]") {
    for (const char* unit : {"ml", "tbsp", "cup", "l"}) {
        const auto dossier =
            unmeasuredKitchen()
                .line(std::string{R"({"id":"o","amount":"1","food":"new-oil","unit":")"} + unit +
                      "\"}")
                .dossier();
        REQUIRE(dossier);
        CHECK(cook(*dossier).error().code == ErrorCode::NoWayToGrams);
    }
}

TEST_CASE("a density that the line states weighs its volume", "[nutrition]") {
    const Served served{unmeasuredKitchen().line(spoons("o", "2"))};
    CHECK(served.way(0).way == Way::Density);
    CHECK(served.way(0).why.basis == WayBasis::StatedDensity);
    CHECK(served.way(0).grams.value() == Approx(2 * 14.78676478125 * 0.92));
    CHECK(served.way(0).grams.uncertainty() == Approx(2 * 14.78676478125 * 0.02 / std::sqrt(12.0)));
}

TEST_CASE("two lines that state one density of one food are off together", "[nutrition]") {
    const auto terms = [](const char* second) {
        const Served served{
            unmeasuredKitchen().line(spoons("a", "1")).line(spoons("b", "1", second))};
        return std::pair{served.way(0).grams.terms()[0].source.key,
                         served.way(1).grams.terms()[0].source.key};
    };
    const auto [a, b] = terms(kStated);
    CHECK(a == b);
    const auto [c, d] =
        terms(R"("density":{"g_per_ml":"0.91","within":"0.01","reason":"weighed"})");
    CHECK_FALSE(c == d);
}

TEST_CASE("a stated density stands behind the table's measure and before its density",
          "[nutrition]") {
    const std::string end = std::string{R"(,"food":"oil",)"} + kStated + "}";
    Kitchen kitchen;
    kitchen.line(R"({"id":"a","amount":"1","unit":"tbsp")" + end);
    kitchen.line(R"({"id":"b","amount":"100","unit":"ml")" + end);
    const Served served{kitchen};
    const auto& spoon = served.cooked.lines[0].ways.ways;
    REQUIRE(spoon.size() == 2);
    CHECK(spoon[0].way == Way::Table);
    CHECK(spoon[1].why.basis == WayBasis::StatedDensity);
    const auto& volume = served.cooked.lines[1].ways.ways;
    REQUIRE(volume.size() == 2);
    CHECK(volume[0].why.basis == WayBasis::StatedDensity);
    CHECK(volume[1].why.basis == WayBasis::MeasureDensity);
}

TEST_CASE("of measures that do not scale the nearest to the amount counts", "[nutrition]") {
    // USDA SR28 06150 barbecue sauce: half a cup 143 g, a cup 279 g; two of its rows.
    TableFood sauce = kitchen::row("06150", "barbecue sauce");
    kitchen::set(sauce, Component::ENERC_KCAL, 172);
    sauce.measures = {{0.5, "cup", "", 143, 0, {}}, {1, "cup", "", 279, 0, {}}};
    const auto way = [&](const char* amount, const char* unit) {
        return Served{Kitchen{}
                          .row("sauce", sauce)
                          .line(std::string{R"({"id":"s","food":"sauce","amount":")"} + amount +
                                R"(","unit":")" + unit + "\"}")}
            .way(0);
    };
    CHECK(way("1/2", "cup").grams.value() == 143);
    CHECK(way("1", "cup").grams.value() == 279);
    CHECK(way("3", "cup").grams.value() == 3 * 279);
    CHECK(way("1/4", "cup").grams.value() == 143.0 / 2);
    CHECK_FALSE(way("1/4", "cup").sizeNotSaid);
    CHECK(way("1/4", "cup").why.measuresDisagree);
    CHECK(way("100", "ml").grams.value() == Approx(100 * 286 / 236.5882365));
    CHECK(way("300", "ml").grams.value() == Approx(300 * 279 / 236.5882365));
}
