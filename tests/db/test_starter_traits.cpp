#include <catch2/catch.hpp>

#include "starter.h"

using namespace nettare;

TEST_CASE("sugar, honey and syrups are added sugars altogether", "[starter]") {
    const FoodTable table = openStarter();
    // 21 CFR 101.9(c)(6)(iii)
    for (const char* number :
         {"19334", "19335", "19336", "19908", "19296", "19304", "19349", "19350", "19353", "19912"})
        CHECK(foodIn(table, number).addedSugars.kind == AddedSugarKind::AllOfItsSugars);
}

TEST_CASE("plain foods have no added sugars", "[starter]") {
    const FoodTable table = openStarter();
    for (const char* number : {"01077", "09003", "09298", "11124", "12061", "20081", "15270",
                               "05062", "01123", "16123", "19165", "09238", "01116"})
        CHECK(foodIn(table, number).addedSugars.kind == AddedSugarKind::None);
}

TEST_CASE("where sugar may have been added the range is from none to all", "[starter]") {
    const FoodTable table = openStarter();
    for (const char* number : {"11935", "06150", "19080", "18069", "07022", "01095", "09081",
                               "09079", "19297", "12179", "16120", "16398"})
        CHECK(foodIn(table, number).addedSugars.kind == AddedSugarKind::BetweenNoneAndAll);
}

TEST_CASE("every food gives the reason for its added sugars", "[starter]") {
    const FoodTable table = openStarter();
    for (const std::string& number : starterNumbers())
        CHECK(foodIn(table, number).addedSugars.reason.size() > 4);
}

TEST_CASE("unhydrogenated plant foods are told from margarine, shortening and mixtures",
          "[starter]") {
    const FoodTable table = openStarter();
    for (const char* number : {"04053", "20081", "19296", "12131", "02014", "20044", "18375"})
        CHECK(foodIn(table, number).plant);
    for (const char* number : {"04610", "04611", "04615", "01003", "18337", "16398", "06175",
                               "19080", "13325", "20093", "18069"})
        CHECK_FALSE(foodIn(table, number).plant);
}

TEST_CASE("no plant food carries cholesterol of note or much trans fat", "[starter]") {
    const FoodTable table = openStarter();
    for (const std::string& number : starterNumbers()) {
        const TableFood food = foodIn(table, number);
        if (!food.plant) continue;
        INFO(number << " " << food.name);
        // The release prints 2 mg per 100 g for baking chocolate (19078), which is cocoa mass only.
        CHECK(food.profile[Component::CHOLE].value_or(0) <= (number == "19078" ? 2 : 0));
        // The refining of soybean oil leaves 0.533 g per 100 g (04044), the most of any here.
        CHECK(food.profile[Component::FATRN].value_or(0) <= 0.533);
    }
}
