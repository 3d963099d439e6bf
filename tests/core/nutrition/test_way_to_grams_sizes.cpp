#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// USDA SR28 11282 onion, raw, without its slices and rings.
TableFood onion() {
    TableFood food = kitchen::row("11282", "onion, raw");
    kitchen::set(food, Component::ENERC_KCAL, 40);
    food.measures = {
        {1, "cup", "chopped", 160, 0, {}},  {1, "cup", "sliced", 115, 0, {}},
        {1, "large onion", "", 150, 0, {}}, {1, "medium onion", "2 1/2 in diameter", 110, 0, {}},
        {1, "small onion", "", 70, 0, {}},  {1, "slice", "thin", 9, 0, {}}};
    return food;
}

OpenWay wayOf(const std::string& amount, const std::string& more) {
    return Served{Kitchen{}
                      .row("onion", onion())
                      .line(R"({"id":"o","food":"onion","amount":")" + amount + "\"," + more + "}")}
        .way(0);
}

}  // namespace

TEST_CASE("a large onion finds the table's large onion", "[nutrition]") {
    CHECK(wayOf("2", R"("piece":"onions","size":"large")").grams.value() == 300);
    CHECK(wayOf("1", R"("piece":"onion","size":"medium")").grams.value() == 110);
    CHECK(wayOf("1", R"("piece":"large onion")").grams.value() == 150);
    CHECK_FALSE(wayOf("1", R"("piece":"onion","size":"small")").sizeNotSaid);
}

TEST_CASE("an onion of no size is anything from small to large", "[nutrition]") {
    const OpenWay way = wayOf("1", R"("piece":"onion")");
    CHECK(way.sizeNotSaid);
    CHECK(way.grams.value() == 110);
    CHECK(*way.why.sizes == Interval{70, 150});
}

TEST_CASE("medium-large lies between the two", "[nutrition]") {
    const OpenWay way = wayOf("1", R"("piece":"onion","size":"medium-large")");
    CHECK(way.grams.value() == 130);
    CHECK(*way.why.sizes == Interval{110, 150});
}

TEST_CASE("a size that the table does not know leaves the size open", "[nutrition]") {
    const OpenWay way = wayOf("1", R"("piece":"onion","size":"about 7 cm across")");
    CHECK(way.sizeNotSaid);
    CHECK(way.grams.value() == 110);
}

TEST_CASE("words of preparation pick a measure in any of their forms", "[nutrition]") {
    CHECK(wayOf("1", R"("unit":"cup","preparation":"finely chopped")").grams.value() == 160);
    CHECK(wayOf("1", R"("unit":"cup","preparation":"in slices")").grams.value() == 115);
    CHECK(wayOf("1", R"("unit":"cup")").sizeNotSaid);
}

TEST_CASE("not packed is not packed", "[nutrition]") {
    TableFood sugar = kitchen::row("19334", "brown sugar");
    kitchen::set(sugar, Component::ENERC_KCAL, 380);
    // USDA SR28 19334: a cup packed 220 g, not packed 145 g.
    sugar.measures = {{1, "cup", "packed", 220, 0, {}}, {1, "cup", "not packed", 145, 0, {}}};
    const auto grams = [&](const char* preparation) {
        return Served{
            Kitchen{}
                .row("brown", sugar)
                .line(std::string{
                          R"({"id":"s","food":"brown","amount":"1","unit":"cup","preparation":")"} +
                      preparation + "\"}")}
            .way(0)
            .grams.value();
    };
    CHECK(grams("packed") == 220);
    CHECK(grams("not packed") == 145);
}
