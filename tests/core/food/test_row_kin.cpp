#include "core/food/row_kin.h"

#include <catch2/catch.hpp>

namespace nettare {

// Names of SR28 (USDA, 2015) and of the starter.
TEST_CASE("rows of one thing are told, whatever was done to it", "[food]") {
    CHECK(isSameThing("onion, raw", "Onions, cooked, boiled, drained, without salt"));
    CHECK(isSameThing("Crustaceans, shrimp, mixed species, raw",
                      "Crustaceans, shrimp, mixed species, cooked, moist heat"));
    CHECK(isSameThing("shrimp, raw", "Crustaceans, shrimp, untreated, raw"));
    CHECK(isSameThing("Spices, thyme, dried", "Thyme, fresh"));
    CHECK(isSameThing("peanuts, roasted, unsalted", "Peanuts, all types, raw"));
    CHECK(isSameThing("whole egg, raw", "Egg, whole, cooked, fried"));
    CHECK(isSameThing("canned chickpeas, drained", "chickpea, dry"));
    CHECK_FALSE(isSameThing("onion, raw", "spring onion, raw"));
    CHECK_FALSE(isSameThing("butter, salted", "peanut butter, smooth"));
    CHECK(isSameThing("Oil, olive, salad or cooking", "olive oil"));
    CHECK_FALSE(isSameThing("Oil, olive, salad or cooking", "olives, ripe"));
    CHECK_FALSE(isSameThing("", ""));
}

TEST_CASE("the thing of a row is its first words, behind its kind", "[food]") {
    using Words = std::vector<std::string>;
    CHECK(thingOf("Fish, salmon, Atlantic, wild, raw") == Words{"salmon"});
    CHECK(thingOf("sweet potatoes, baked") == Words{"sweet", "potato"});
    CHECK(thingOf("Cheese") == Words{"cheese"});
    CHECK(thingOf("raw, 80%").empty());
}

TEST_CASE("what was done to a food stands in its name", "[food]") {
    using All = std::vector<Treatment>;
    CHECK(treatmentsOf("Onions, raw") == All{Treatment::Raw});
    CHECK(treatmentsOf("Beans, kidney, red, mature seeds, canned, drained solids") ==
          All{Treatment::Drained, Treatment::Canned});
    CHECK(treatmentsOf("Corn, sweet, yellow, cooked, boiled, drained, with salt") ==
          All{Treatment::Cooked, Treatment::Drained, Treatment::Salted});
    CHECK(treatmentsOf("Tomato products, canned, paste, without salt added") ==
          All{Treatment::Canned, Treatment::Unsalted});
    CHECK(treatmentsOf("Pork, fresh, enhanced, loin, raw") ==
          All{Treatment::Raw, Treatment::Treated});
    CHECK(treatmentsOf("Peaches, canned, heavy syrup pack") ==
          All{Treatment::Canned, Treatment::Sweetened});
    CHECK(treatmentsOf("honey").empty());
    CHECK(nameOf(Treatment::Unsalted) == "without salt");
    CHECK(nameOf(Treatment::Treated) == "treated");
}

}  // namespace nettare
