#include "core/food/table_food_json.h"

#include <catch2/catch.hpp>
#include <random>

#include "json_edit.h"
#include "kitchen.h"

using namespace nettare;

namespace {

/// Every member of a food filled, with numbers that few digits cannot write.
TableFood fullFood(std::mt19937& random) {
    const auto any = [&random] { return static_cast<double>(random()) / 3.0e6; };
    TableFood food = kitchen::row("01234", "Beans, kidney, \"red\", µ and ½");
    food.group = "legume";
    food.refusePercent = any() / 100;
    food.refuseNote = "pods and strings";
    food.plant = true;
    food.factors = {any(), any(), any(), any()};
    for (std::size_t i = 0; i < kComponentCount; ++i) {
        if (i % 3 != 0) food.profile.per100g[i] = any();
        if (i % 4 == 1) food.profile.spread[i] = {any(), static_cast<int>(i), {}};
        if (i % 4 == 2) food.profile.spread[i] = {{}, 0, any()};
    }
    food.addedSugars = {AddedSugarKind::Stated, any(), "a syrup went in"};
    food.measures = {{0.25, "cup", "mashed", any(), 12, any()}, {1, "bean", "", any(), 0, {}}};
    food.otherNames = {"frijoles", "haricots rouges"};
    return food;
}

void checkSame(const TableFood& a, const TableFood& b) {
    CHECK(a.row == b.row);
    CHECK(a.name == b.name);
    CHECK(a.group == b.group);
    CHECK(a.refusePercent == b.refusePercent);
    CHECK(a.refuseNote == b.refuseNote);
    CHECK(a.plant == b.plant);
    CHECK(a.factors.nitrogen == b.factors.nitrogen);
    CHECK(a.factors.protein == b.factors.protein);
    CHECK(a.factors.fat == b.factors.fat);
    CHECK(a.factors.carbohydrate == b.factors.carbohydrate);
    CHECK(a.profile.per100g == b.profile.per100g);
    for (std::size_t i = 0; i < kComponentCount; ++i) {
        CHECK(a.profile.spread[i].standardError == b.profile.spread[i].standardError);
        CHECK(a.profile.spread[i].n == b.profile.spread[i].n);
        CHECK(a.profile.spread[i].assumedRelative == b.profile.spread[i].assumedRelative);
    }
    CHECK(a.addedSugars.kind == b.addedSugars.kind);
    CHECK(a.addedSugars.statedPer100g == b.addedSugars.statedPer100g);
    CHECK(a.addedSugars.reason == b.addedSugars.reason);
    CHECK(a.otherNames == b.otherNames);
    REQUIRE(a.measures.size() == b.measures.size());
    for (std::size_t i = 0; i < a.measures.size(); ++i) {
        CHECK(a.measures[i].amount == b.measures[i].amount);
        CHECK(a.measures[i].unit == b.measures[i].unit);
        CHECK(a.measures[i].qualifier == b.measures[i].qualifier);
        CHECK(a.measures[i].grams == b.measures[i].grams);
        CHECK(a.measures[i].n == b.measures[i].n);
        CHECK(a.measures[i].standardDeviation == b.measures[i].standardDeviation);
    }
}

TableFood throughText(const TableFood& food) {
    const auto parsed = parseJson(writeJson(tableFoodJson(food)));
    REQUIRE(parsed);
    auto read = readTableFood(*parsed);
    REQUIRE(read);
    return std::move(*read);
}

}  // namespace

TEST_CASE("a food comes back from its JSON with every digit", "[food]") {
    std::mt19937 random{11957};
    for (int i = 0; i < 20; ++i) {
        const TableFood food = fullFood(random);
        checkSame(throughText(food), food);
    }
    for (const TableFood& food : {kitchen::fennel(), kitchen::oliveOil(), kitchen::sugar()})
        checkSame(throughText(food), food);
}

TEST_CASE("the version of a food changes with any of its numbers and with nothing else", "[food]") {
    TableFood food = kitchen::fennel();
    const std::string version = foodVersion(food);
    CHECK(version.size() == 64);
    CHECK(foodVersion(throughText(food)) == version);
    food.profile.per100g[indexOf(Component::NA)] = 52.000000000000007;
    CHECK(foodVersion(food) != version);
    food = kitchen::fennel();
    food.measures[1].n = 3;
    CHECK(foodVersion(food) != version);
}

TEST_CASE("a damaged food is refused at its place", "[food]") {
    const Json good = tableFoodJson(kitchen::fennel());
    const auto errorOf = [](const Json& json) {
        const auto read = readTableFood(json);
        REQUIRE_FALSE(read);
        return read.error();
    };
    CHECK(errorOf(with(good, "/measures/0/grams", Json{"87"})).pointer == "/measures/0/grams");
    CHECK(errorOf(with(good, "/measures/0/grams", Json{"87"})).code == ErrorCode::WrongKind);
    CHECK(errorOf(with(good, "/measures/0/n", Json{1.5})).code == ErrorCode::OutOfRange);
    CHECK(errorOf(with(good, "/components/0/component", Json{"X"})).code ==
          ErrorCode::ComponentUnknown);
    CHECK(errorOf(with(good, "/other_names/-", Json{1.0})).pointer == "/other_names/0");
    CHECK(errorOf(with(good, "/colour", Json{"green"})).code == ErrorCode::UnknownKey);
    CHECK(errorOf(without(good, "/row")).code == ErrorCode::MissingKey);
}
