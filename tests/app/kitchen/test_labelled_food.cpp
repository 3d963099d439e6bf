#include "app/kitchen/labelled_food.h"

#include <catch2/catch.hpp>

#include "app/words/error_sentence.h"
#include "core/label/label_values.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr auto kSavedAt = "2026-05-16T12:00:00+02:00";

void saveFood(Kitchen& kitchen, const std::string& name, bool labelled) {
    OwnFood own;
    own.food.row = {"own", "", ""};
    own.food.name = name;
    own.origin = {"package label", "2026-05-16", "", {}, "", {}};
    if (labelled) {
        LabelFacts label;
        label.per = LabelPer::HundredGrams;
        label.amounts = {{Component::ENERC_KCAL, "120"}};
        own.food.label = std::move(label);
    }
    REQUIRE(kitchen.saveOwnFood(own, kSavedAt));
}

Kitchen labelledKitchen() {
    auto kitchen = Kitchen::inMemory(kSavedAt);
    REQUIRE(kitchen);
    saveFood(*kitchen, "Thick yogurt", true);
    saveFood(*kitchen, "Thick yogurt, low fat", true);
    saveFood(*kitchen, "Thin crackers", true);
    saveFood(*kitchen, "Rye flour", false);
    return std::move(*kitchen);
}

std::string refusedName(const Kitchen& kitchen, const std::string& name) {
    const auto found = labelledFoodNamed(kitchen, name);
    REQUIRE_FALSE(found);
    return errorSentence(found.error());
}

}  // namespace

TEST_CASE("a labelled food is found by its name, or by how it begins", "[kitchen][label]") {
    const Kitchen kitchen = labelledKitchen();
    const auto nameOfFound = [&](const char* name) {
        return labelledFoodNamed(kitchen, name)->current.food.name;
    };
    CHECK(nameOfFound("thick YOGURT") == "Thick yogurt");
    CHECK(nameOfFound("thick yogurt, ") == "Thick yogurt, low fat");
    CHECK(nameOfFound(" thin") == "Thin crackers");
}

TEST_CASE("a name that is no labelled food's, or several's, is told with what to do",
          "[kitchen][label]") {
    const Kitchen kitchen = labelledKitchen();
    CHECK(refusedName(kitchen, "oat drink") ==
          "this kitchen has no label called “oat drink”; leave the name out to add a new one.");
    CHECK(refusedName(kitchen, " ") ==
          "this kitchen has no label called “ ”; leave the name out to add a new one.");
    CHECK(refusedName(kitchen, "thi") ==
          "several labels of this kitchen begin with “thi”: “Thick yogurt”, “Thick yogurt, low "
          "fat”, “Thin crackers”; write one of them whole, or its UUID.");
    CHECK(refusedName(kitchen, "rye") ==
          "Rye flour was typed from another source than a package; change it in the pantry.");
}

TEST_CASE("of two labels of one name each is found by its UUID", "[kitchen][label]") {
    Kitchen kitchen = labelledKitchen();
    saveFood(kitchen, "thin crackers", true);
    std::vector<std::string> ids;
    const auto foods = kitchen.ownFoods();
    REQUIRE(foods);
    for (const OwnFoodRecord& food : *foods)
        if (lowerAscii(food.current.food.name) == "thin crackers") {
            ids.push_back(food.id());
            const auto byId = labelledFoodNamed(kitchen, food.id());
            REQUIRE(byId);
            CHECK(byId->id() == food.id());
            CHECK(labelledFoodNamed(kitchen, food.current.food.row.text())->id() == food.id());
        }
    REQUIRE(ids.size() == 2);
    const std::string sentence = refusedName(kitchen, "Thin crackers");
    INFO(sentence);
    for (const std::string& id : ids) CHECK(sentence.find(" (" + id + ")") != std::string::npos);
    CHECK(sentence.ends_with("; write one of them whole, or its UUID."));
}

TEST_CASE("a label that is out of use is not found by name", "[kitchen][label]") {
    Kitchen kitchen = labelledKitchen();
    const std::string id = labelledFoodNamed(kitchen, "thin")->id();
    REQUIRE(kitchen.addOwnFoodEvent({id, OwnFoodEventKind::Retired, 0, {}, kSavedAt}));
    CHECK_FALSE(labelledFoodNamed(kitchen, "thin"));
}

}  // namespace nettare
