#include "core/food/food_state.h"

#include <catch2/catch.hpp>

#include "core/food/refuse_doubt.h"

using namespace nettare;

namespace {

TableFood named(const char* name) {
    TableFood food;
    food.name = name;
    return food;
}

std::optional<FoodState> stateNamed(const char* name) {
    return stateOf(named(name));
}

TableFood refused(const char* name, double percent, const char* note) {
    TableFood food = named(name);
    food.refusePercent = percent;
    food.refuseNote = note;
    return food;
}

}  // namespace

TEST_CASE("a row's name tells its state", "[food]") {
    // Names as USDA SR28 publishes them.
    CHECK(stateNamed("Carrots, raw") == FoodState::Raw);
    CHECK(stateNamed("Carrots, cooked, boiled, drained, without salt") == FoodState::Cooked);
    CHECK(stateNamed("Corn, sweet, yellow, canned, drained solids") == FoodState::Drained);
    CHECK(stateNamed("Beans, kidney, all types, mature seeds, raw") == FoodState::Raw);
    CHECK(stateNamed("Pasta, dry, enriched") == FoodState::Dry);
    CHECK(stateNamed("Spices, basil, dried") == FoodState::Dry);
    CHECK(stateNamed("Fish, salmon, pink, canned, without salt, solids with bone and liquid") ==
          FoodState::WithBone);
    CHECK(stateNamed("Nuts, almonds, dry roasted, without salt added") == FoodState::Cooked);
    CHECK(stateNamed("Honey") == std::nullopt);
    CHECK(stateNamed("Peaches, canned, juice pack, solids and liquids") == std::nullopt);
}

TEST_CASE("dry is no state of wine and salami", "[food]") {
    CHECK(stateNamed("dry dessert wine") == std::nullopt);
    CHECK(stateNamed("salami, dry") == std::nullopt);
}

TEST_CASE("a preparation tells a state where it comes before the scale", "[food]") {
    CHECK(stateOfPreparation("drained") == FoodState::Drained);
    CHECK(stateOfPreparation("boiled and drained") == FoodState::Cooked);
    CHECK(stateOfPreparation("drained, rinsed") == FoodState::Drained);
    CHECK(stateOfPreparation("finely chopped") == std::nullopt);
    CHECK(stateOfPreparation("toasted") == std::nullopt);
    CHECK(stateOfPreparation("") == std::nullopt);
}

TEST_CASE("raw rice is dry rice, and fresh basil is not dried", "[food]") {
    CHECK(holdsFor(named("long-grain white rice, raw"), FoodState::Dry));
    CHECK(holdsFor(named("pasta, dry"), FoodState::Raw));
    CHECK_FALSE(holdsFor(named("basil, dried"), FoodState::Raw));
    CHECK_FALSE(holdsFor(named("long-grain white rice, raw"), FoodState::Cooked));
    CHECK(holdsFor(named("honey"), FoodState::Raw));
    CHECK_FALSE(holdsFor(named("peaches, canned in juice, with liquid"), FoodState::Drained));
    CHECK(holdsFor(named("firm tofu"), FoodState::Drained));
    CHECK_FALSE(holdsFor(named("whole chicken, with skin, raw"), FoodState::WithBone));
}

TEST_CASE("refuse that a kitchen does not take off is doubtful", "[food]") {
    CHECK(refuseDoubt(refused("walnuts", 55, "shell, when bought in shell")) ==
          RefuseDoubt::ShellIfBoughtInShell);
    CHECK(refuseDoubt(refused("russet potatoes, skin on, raw", 25,
                              "peel and trim, although the values are for potato with skin")) ==
          RefuseDoubt::PeelThoughEaten);
    CHECK(refuseDoubt(refused("pork loin roast, boneless, raw", 16, "gristle")) ==
          RefuseDoubt::Gristle);
    CHECK(refuseDoubt(refused("chicken thigh, skinless, raw", 25, "skin and loose fat")) ==
          RefuseDoubt::SkinOfSkinless);
    CHECK(refuseDoubt(refused("chicken drumstick, with skin, raw", 66,
                              "bone and gristle; published as two shares of 33, which counts the "
                              "bone twice")) == RefuseDoubt::WrongSum);
}

TEST_CASE("plain refuse raises no doubt", "[food]") {
    CHECK_FALSE(refuseDoubt(refused("whole egg, raw", 12, "shell")));
    CHECK_FALSE(refuseDoubt(refused("fennel bulb, raw", 28, "stalks, leaves and core")));
    CHECK_FALSE(refuseDoubt(refused("strip steak, raw", 10, "bone and gristle")));
    CHECK_FALSE(refuseDoubt(refused("olive oil", 0, "")));
}
