#include <catch2/catch.hpp>

#include "core/label/us_rounding.h"
#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

// A soup constructed for checking, with illustrative compositions, by the sum of raw ingredients
// over the cooked weight (Greenfield and Southgate, Food composition data, FAO, chapter on dishes
// from recipes; EuroFIR's mixed method with no loss of nutrients). Its vitamin C and potassium need
// retention factors and are left out. Energy is 4 protein + 4 carbohydrate + 9 fat, 21 CFR
// 101.9(c)(1)(i)(B).

namespace {

struct Ingredient {
    const char* name;
    const char* grams;
    const char* water;
    const char* protein;
    const char* fat;
    const char* carbohydrate;
    const char* sodium;
    const char* kcal;
};

constexpr Ingredient kSoup[] = {
    {"potato", "500", "79.0", "2.0", "0.1", "17.0", "0", "76.9"},
    {"leek", "200", "83.0", "1.5", "0.3", "14.0", "0", "64.7"},
    {"butter", "30", "16.0", "0.9", "81.0", "0.1", "0", "733"},
    {"water", "400", "100", "0", "0", "0", "0", "0"},
    {"salt", "5", "0", "0", "0", "0", "38758", "0"},
};

std::string statedOf(Component component, const char* per100g) {
    return std::string{R"({"component":")"} + std::string{factsOf(component).tagname} +
           R"(","per_100g":")" + per100g + R"(","within":"0","reason":"illustrative"})";
}

std::string foodOf(const Ingredient& one) {
    std::string food = R"({"id":")";
    food.append(one.name).append(R"(","name":")").append(one.name).append(R"(","stated":[)");
    food.append(statedOf(WATER, one.water))
        .append(",")
        .append(statedOf(PROCNT, one.protein))
        .append(",")
        .append(statedOf(FAT, one.fat));
    food.append(",").append(statedOf(CHOCDF, one.carbohydrate)).append(",");
    food.append(statedOf(NA, one.sodium)).append(",");
    return food.append(statedOf(ENERC_KCAL, one.kcal)).append("]}");
}

std::string lineOfSoup(const Ingredient& one) {
    std::string line = R"({"id":")";
    line.append(one.name).append(R"(","amount":")").append(one.grams);
    return line.append(R"(","unit":"g","food":")").append(one.name).append(R"("})");
}

Served soup() {
    Kitchen kitchen;
    for (const Ingredient& one : kSoup) {
        kitchen.append("foods", foodOf(one));
        kitchen.line(lineOfSoup(one));
    }
    kitchen.reading("dish", "1000", "", "cooked");
    kitchen.json("cooked", R"({"readings":["dish"]})").json("portion", R"({"grams":"250"})");
    return Served{kitchen};
}

}  // namespace

TEST_CASE("a soup weighs what went in, and yields what is left of it", "[nutrition]") {
    const Served served = soup();
    CHECK(served.cooked.eaten.used.value() == Approx(1135).epsilon(1e-12));
    CHECK(served.cooked.eaten.cooked->value() / served.cooked.eaten.used.value() ==
          Approx(0.881057269).epsilon(1e-9));
    CHECK(*portionsOf(served.dossier, served.cooked) == Approx(4).epsilon(1e-12));
}

TEST_CASE("what a soup loses in cooking is water", "[nutrition]") {
    // W = sum of raw water - (raw - cooked): 965.8 - 135 g.
    const Served served = soup();
    CHECK(served.figure(Basis::Batch, WATER).value == Approx(830.8).epsilon(1e-12));
    CHECK(served.figure(Basis::Hundred, WATER).value == Approx(83.08).epsilon(1e-12));
}

TEST_CASE("a dish dried beyond its water has none, and not less", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("crisp", "5", "", "cooked");
    kitchen.line(R"({"id":"f","amount":"100","unit":"g","food":"fennel"})");
    kitchen.json("cooked", R"({"readings":["crisp"]})");
    CHECK(Served{kitchen}.figure(Basis::Batch, WATER).value == 0);
}

TEST_CASE("a soup holds the nutrients of its raw ingredients", "[nutrition]") {
    const Served served = soup();
    const std::pair<Component, double> batch[] = {
        {PROCNT, 13.27}, {FAT, 25.4}, {CHOCDF, 113.03}, {NA, 1937.9}};
    for (const auto& [component, amount] : batch) {
        INFO(factsOf(component).tagname);
        CHECK(served.figure(Basis::Batch, component).value == Approx(amount).epsilon(1e-12));
        CHECK(served.figure(Basis::Batch, component).complete());
    }
}

TEST_CASE("a soup's figures per 100 g are of its cooked weight", "[nutrition]") {
    const Served served = soup();
    const std::pair<Component, double> hundred[] = {
        {PROCNT, 1.327}, {FAT, 2.54}, {CHOCDF, 11.303}, {NA, 193.79}, {ENERC_KCAL, 73.38}};
    for (const auto& [component, amount] : hundred) {
        INFO(factsOf(component).tagname);
        CHECK(served.figure(Basis::Hundred, component).value == Approx(amount).epsilon(1e-12));
    }
}

TEST_CASE("a portion of 250 g of soup prints as the case says", "[nutrition]") {
    const Served served = soup();
    CHECK(served.figure(Basis::Portion, ENERC_KCAL).value == Approx(183.45).epsilon(1e-12));
    const std::pair<Component, const char*> printed[] = {
        {ENERC_KCAL, "180"}, {FAT, "6"}, {CHOCDF, "28"}, {PROCNT, "3"}, {NA, "480"}};
    for (const auto& [component, text] : printed) {
        INFO(factsOf(component).tagname);
        const auto print = usAmountText(component, served.figure(Basis::Portion, component).value);
        REQUIRE(print);
        CHECK(*print == text);
    }
}
