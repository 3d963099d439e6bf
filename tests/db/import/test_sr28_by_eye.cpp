#include <algorithm>
#include <catch2/catch.hpp>

#include "db/food_table.h"
#include "sr28.h"

using namespace nettare;

namespace {

/// A value as NUT_DATA has it, with the words of SRC_CD and DERIV_CD for its codes.
struct ReadValue {
    const char* food;
    const char* name;
    const char* number;
    double value;
    int n;
    double standardError;  ///< negative: none
    const char* source;
    const char* derivation;
};

struct ReadMeasure {
    const char* food;
    double amount;
    const char* unit;
    const char* qualifier;
    double grams;
    int n;
    double standardDeviation;  ///< negative: none
};

constexpr auto kAnalysed = "Analytical or derived from analytical";
constexpr auto kImputed = "Calculated or imputed";
constexpr auto kZero = "Assumed zero";
constexpr auto kZeroWhy =
    "Assumed zero (Insignificant amount or not naturally occurring in a food, such as fiber in "
    "meat)";

// Twenty foods drawn at random, read from FOOD_DES, NUT_DATA and WEIGHT with a pager.
const ReadValue kValues[]{
    {"08124", "Cereals, QUAKER, Instant Oatmeal, apples and cinnamon, dry", "417", 205, 0, -1,
     "Calculated by manufacturer, not adjusted or rounded for NLEA",
     "Manufacturer supplied; Calculated by manufacturer or unknown if analytical or calculated"},
    {"09025", "Apricots, canned, extra light syrup pack, with skin, solids and liquids", "305", 12,
     1, -1, kAnalysed, ""},
    {"11148", "Chard, swiss, cooked, boiled, drained, without salt", "404", 0.034, 0, -1, kAnalysed,
     ""},
    {"12201", "Seeds, sesame seed kernels, dried (decorticated)", "210", 0.31, 4, 0.263, kAnalysed,
     "Analytical data"},
    {"09056", "Boysenberries, canned, heavy syrup", "203", 0.99, 3, 0.025, kAnalysed, ""},
    {"23560", "Beef, ground, 95% lean meat / 5% fat, crumbles, cooked, pan-browned", "204", 7.58,
     36, 0.791, kAnalysed, "Analytical data; derived by linear regression"},
    {"21321", "McDONALD'S, Hotcakes (plain)", "255", 48.24, 1, -1, kAnalysed, "Analytical data"},
    {"11841",
     "Potatoes, french fried, all types, salt not added in processing, frozen, oven-heated", "344",
     0.02, 6, 0.008, kAnalysed, "Analytical data"},
    {"11881", "Taro, tahitian, cooked, with salt", "410", 0.126, 0, -1, kImputed, ""},
    {"09292", "Plums, dried (prunes), stewed, without added sugar", "321", 173, 0, -1, kImputed,
     "Based on another form of the food or similar food; Concentration adjustment; Solids; "
     "Retention factors not used"},
    {"19856", "Frozen novelties, juice type, POPSICLE SCRIBBLERS", "401", 1.2, 1, -1, kAnalysed,
     "Analytical data"},
    {"10221", "Pork, fresh, loin, tenderloin, separable lean and fat, cooked, broiled", "516",
     1.463, 0, -1, kAnalysed, ""},
    {"09029", "Apricots, canned, extra heavy syrup pack, without skin, solids and liquids", "601",
     0, 0, -1, kZero, kZeroWhy},
    {"11339", "Peppers, sweet, green, sauteed", "417", 2, 4, 0.000, kAnalysed, "Analytical data"},
    {"11654", "Beans, pinto, mature seeds, sprouted, cooked, boiled, drained, without salt", "306",
     98, 0, -1, kAnalysed, ""},
    {"03197", "Babyfood, cereal, with egg yolks, strained", "203", 1.90, 11, 0.000, kAnalysed, ""},
    {"21022", "Fast foods, english muffin, with egg, cheese, and sausage", "619", 0.120, 4, 0.004,
     kAnalysed, "Analytical data"},
    {"13497", "Beef, ground, 70% lean meat / 30% fat, patty, cooked, broiled", "324", 2, 0, -1,
     kImputed,
     "Nutrient that is based on other nutrient/s; value used directly, ex. Nut.#204 from "
     "Nut.#298"},
    {"05684", "Chicken, skin (drumsticks and thighs), with added solution, cooked, braised", "853",
     0.059, 1, -1, kAnalysed, "Analytical data"},
    {"06632", "Sauce, hot chile, sriracha, CHA! BY TEXAS PETE", "307", 2903, 3, 20.276, kAnalysed,
     "Analytical data"}};

const ReadMeasure kMeasures[]{{"08124", 1, "packet", "1 NLEA serving", 43, 0, -1},
                              {"09025", 1, "cup", "halves", 247, 0, -1},
                              {"12201", 1, "tbsp", "", 8.0, 0, -1},
                              {"11841", 10, "strip", "", 74, 18, 48.34},
                              {"11881", 1, "cup", "slices", 137, 0, -1},
                              {"09292", 1, "cup", "pitted", 248, 0, -1},
                              {"11339", 1, "cup", "chopped", 115, 4, 18.956},
                              {"13497", 1, "patty", "", 70, 42, 2.946},
                              {"06632", 1, "tsp", "", 6.9, 5, 0.277},
                              {"21022", 1, "item", "", 165, 0, -1}};

FoodTable wholeTable() {
    auto table = FoodTable::open(NETTARE_SR28_TABLE);
    REQUIRE(table);
    return std::move(*table);
}

}  // namespace

TEST_CASE("values read by eye from the publisher's file stand in the table", "[import][sr28]") {
    if (!hasSr28()) return;
    const FoodTable table = wholeTable();
    for (const ReadValue& read : kValues) {
        INFO(read.food << " " << read.number);
        CHECK((*table.find(read.food))->name == read.name);
        const auto values = table.values(read.food);
        REQUIRE(values);
        const auto value = std::ranges::find(*values, read.number, &FoodValue::number);
        REQUIRE(value != values->end());
        CHECK(value->per100g == read.value);
        CHECK(value->n == read.n);
        CHECK(value->standardError.value_or(-1) == read.standardError);
        CHECK(value->source == read.source);
        CHECK(value->derivation == read.derivation);
    }
}

TEST_CASE("measures read by eye from the publisher's file stand in the table", "[import][sr28]") {
    if (!hasSr28()) return;
    const FoodTable table = wholeTable();
    for (const ReadMeasure& read : kMeasures) {
        INFO(read.food);
        const auto food = *table.find(read.food);
        const auto measure =
            std::ranges::find(food->measures, read.grams, &HouseholdMeasure::grams);
        REQUIRE(measure != food->measures.end());
        CHECK(measure->amount == read.amount);
        CHECK(measure->unit == read.unit);
        CHECK(measure->qualifier == read.qualifier);
        CHECK(measure->n == read.n);
        CHECK(measure->standardDeviation.value_or(-1) == read.standardDeviation);
    }
}

TEST_CASE("names, refuse and factors read by eye stand in the table", "[import][sr28]") {
    if (!hasSr28()) return;
    const FoodTable table = wholeTable();
    const auto plums = *table.find("09292");
    CHECK(plums->group == "Fruits and Fruit Juices");
    CHECK(plums->refusePercent == 15);
    CHECK(plums->refuseNote == "Pits");
    CHECK(plums->factors.nitrogen == 6.25);
    CHECK(plums->factors.protein == 3.36);
    CHECK(plums->factors.fat == 8.37);
    CHECK(plums->factors.carbohydrate == 3.60);
    const auto peppers = *table.find("11339");
    CHECK_FALSE(peppers->factors.nitrogen);
    CHECK_FALSE(peppers->factors.protein);
    // Kitchen names of our own follow those that are published.
    CHECK((*table.find("09056"))->otherNames.at(0) == "Rubus ursinus var. loganobaccus");
    CHECK((*table.find("23560"))->otherNames.at(0) == "hamburger");
}
