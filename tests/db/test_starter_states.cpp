#include <catch2/catch.hpp>

#include "core/food/food_state.h"
#include "core/food/refuse_doubt.h"
#include "core/recipe/words.h"
#include "db/build_table/text_table.h"
#include "starter.h"

using namespace nettare;

TEST_CASE("the name of every starter food tells the state that a reader sees in it", "[starter]") {
    const auto text =
        readTextTable(NETTARE_TEST_DATA "/starter", "food_states.txt", "number|name|state");
    REQUIRE(text);
    REQUIRE(text->rows.size() == starterNumbers().size());
    const FoodTable table = openStarter();
    for (const TextRow& row : text->rows) {
        const TableFood food = foodIn(table, row.fields[0]);
        const auto state = stateOf(food);
        INFO(food.row.number << " " << food.name);
        CHECK(food.name == row.fields[1]);
        CHECK((state ? wordFor(*state, kFoodStateWords) : "-") == row.fields[2]);
    }
}

TEST_CASE("the starter's doubtful refuse is that of its notes", "[starter]") {
    const FoodTable table = openStarter();
    std::vector<std::string> wrong;
    std::vector<std::string> peel;
    std::vector<std::string> skin;
    std::vector<std::string> gristle;
    int shells = 0;
    for (const std::string& number : starterNumbers()) {
        const auto doubt = refuseDoubt(foodIn(table, number));
        if (doubt == RefuseDoubt::WrongSum) wrong.push_back(number);
        if (doubt == RefuseDoubt::PeelThoughEaten) peel.push_back(number);
        if (doubt == RefuseDoubt::SkinOfSkinless) skin.push_back(number);
        if (doubt == RefuseDoubt::Gristle) gristle.push_back(number);
        if (doubt == RefuseDoubt::ShellIfBoughtInShell) ++shells;
    }
    CHECK(wrong == std::vector<std::string>{"05066", "05098"});
    CHECK(peel == std::vector<std::string>{"11352", "11353"});
    CHECK(skin == std::vector<std::string>{"05013", "05064", "05096", "05141", "05710"});
    CHECK(gristle == std::vector<std::string>{"10218", "10224", "13803", "23201", "23217"});
    CHECK(shells == 10);
}
