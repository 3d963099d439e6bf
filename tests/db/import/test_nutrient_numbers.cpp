#include "db/import/nutrient_numbers.h"

#include <catch2/catch.hpp>
#include <set>
#include <string_view>

namespace nettare {

TEST_CASE("each component has one USDA nutrient number, and the number leads back to it",
          "[import]") {
    std::set<std::string_view> numbers;
    for (const ComponentFacts& facts : allComponents()) {
        INFO(facts.tagname);
        const std::string_view number = nutrientNumberOf(facts.component);
        CHECK(numbers.insert(number).second);
        CHECK(componentOfNutrientNumber(number) == facts.component);
    }
}

TEST_CASE("nutrient 208 is energy in kcal, 328 vitamin D in µg, and 324 in IU is neither",
          "[import]") {
    CHECK(componentOfNutrientNumber("208") == Component::ENERC_KCAL);
    CHECK(componentOfNutrientNumber("268") == Component::ENERC_KJ);
    CHECK(componentOfNutrientNumber("328") == Component::VITD);
    CHECK_FALSE(componentOfNutrientNumber("324"));
    CHECK_FALSE(componentOfNutrientNumber("957"));
    CHECK_FALSE(componentOfNutrientNumber(""));
}

TEST_CASE("units read the same in both USDA tables", "[import]") {
    CHECK(unitOfUsda("UG") == "µg");
    CHECK(unitOfUsda("µg") == "µg");
    CHECK(unitOfUsda("KCAL") == "kcal");
    CHECK(unitOfUsda("kJ") == "kJ");
    CHECK(unitOfUsda("IU") == "IU");
    CHECK(unitOfUsda("SP_GR") == "SP_GR");
}

}  // namespace nettare
