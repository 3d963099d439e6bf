#include <catch2/catch.hpp>

#include "db/import/imported_traits.h"

using namespace nettare;

namespace {

constexpr auto kVegetables = "Vegetables and Vegetable Products";

bool isPlant(std::string_view name, std::string_view group) {
    return importedTraits(name, group, processingPlace(name, group)).plant;
}

AddedSugarKind sugars(std::string_view name, std::string_view group) {
    return importedTraits(name, group, processingPlace(name, group)).addedSugars.kind;
}

}  // namespace

TEST_CASE("a raw vegetable, a nut and a grain are plants without added sugars", "[import]") {
    for (const auto& [name, group] : {std::pair{"Carrots, raw", kVegetables},
                                      {"Nuts, almonds", "Nut and Seed Products"},
                                      {"Apples, raw, with skin", "Fruits and Fruit Juices"},
                                      {"Barley, pearled, raw", "Cereal Grains and Pasta"}}) {
        INFO(name);
        CHECK(isPlant(name, group));
        CHECK(sugars(name, group) == AddedSugarKind::None);
    }
}

TEST_CASE("a name that speaks of fat, frying or mixture is no plant food", "[import]") {
    CHECK_FALSE(isPlant("Potatoes, french fried", kVegetables));
    CHECK_FALSE(
        isPlant("Potatoes, mashed, home-prepared, whole milk and margarine added", kVegetables));
    CHECK_FALSE(isPlant("Broccoli with cheese sauce", kVegetables));
    CHECK_FALSE(isPlant("Nuts, almonds, oil roasted", "Nut and Seed Products"));
    CHECK_FALSE(isPlant("Shortening, hydrogenated soybean", "Fats and Oils"));
    CHECK_FALSE(isPlant("Oil, olive", "Fats and Oils"));
    CHECK_FALSE(isPlant("Cereals ready-to-eat, granola", "Breakfast Cereals"));
}

TEST_CASE("meat and fish are no plants and have no added sugars where they are plain", "[import]") {
    CHECK_FALSE(isPlant("Beef, ground, raw", "Beef Products"));
    CHECK(sugars("Beef, ground, raw", "Beef Products") == AddedSugarKind::None);
    CHECK(sugars("Pork, cured, ham", "Pork Products") == AddedSugarKind::BetweenNoneAndAll);
    CHECK(sugars("Peaches, frozen, sliced, sweetened", "Fruits and Fruit Juices") ==
          AddedSugarKind::BetweenNoneAndAll);
    CHECK(sugars("Milk, chocolate", "Dairy and Egg Products") == AddedSugarKind::BetweenNoneAndAll);
    CHECK(sugars("Honey", "Sweets") == AddedSugarKind::BetweenNoneAndAll);
}

TEST_CASE("of an unknown group nothing is assumed", "[import]") {
    CHECK_FALSE(isPlant("Moonroot, raw", ""));
    CHECK(sugars("Moonroot, raw", "") == AddedSugarKind::BetweenNoneAndAll);
}
