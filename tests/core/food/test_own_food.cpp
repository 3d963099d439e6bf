#include <catch2/catch.hpp>
#include <cmath>

#include "core/food/own_food_entry.h"
#include "core/food/own_food_json.h"
#include "core/label/label_values.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

using enum Component;

double& value(TableFood& food, Component component) {
    auto& at = food.profile.per100g[indexOf(component)];
    if (!at) at = 0;
    return *at;
}

/// A row with two values, one of them with a published spread.
TableFood fennel() {
    TableFood food;
    food.row = {"usda-sr", "28", "11957"};
    food.name = "fennel bulb, raw";
    food.group = "vegetable";
    food.refusePercent = 28;
    food.refuseNote = "stalks, leaves and core";
    value(food, ENERC_KCAL) = 31;
    value(food, ENERC_KJ) = 129;
    value(food, PROCNT) = 1.24;
    food.profile.spread[indexOf(PROCNT)] = {0.05, 7, {}};
    value(food, FAT) = 0.2;
    food.profile.spread[indexOf(FAT)].assumedRelative = 0.39;
    food.addedSugars = {AddedSugarKind::None, 0, "the vegetable's own sugars"};
    food.measures = {{1, "cup", "sliced", 87, 4, 2.5}};
    return food;
}

std::string& typed(OwnFoodEntry& entry, Component component) {
    return entry.per100g[indexOf(component)];
}

/// The copy as a form begins with it, its source filled in.
OwnFoodEntry begun(const OwnFood& copy) {
    OwnFoodEntry entry = entryOf(copy);
    entry.source = "grower's sheet";
    entry.date = "2026-05-16";
    return entry;
}

Error refusalOf(const OwnFoodEntry& entry) {
    const auto own = ownFoodFrom(entry, copyOf(fennel()), {});
    REQUIRE_FALSE(own);
    return own.error();
}

}  // namespace

TEST_CASE("what is left in a copied food stays to the last digit, with its published spread",
          "[own]") {
    const OwnFood copy = copyOf(fennel());
    OwnFoodEntry entry = begun(copy);
    typed(entry, FAT) = "0.25";
    const auto own = ownFoodFrom(entry, copy, {});
    REQUIRE(own);
    CHECK(own->origin.copiedFrom == fennel().row);
    CHECK(own->origin.copiedName == "fennel bulb, raw");
    CHECK(own->origin.changed == std::vector{FAT});
    CHECK(own->food.profile[PROCNT] == 1.24);
    CHECK(own->food.profile.spread[indexOf(PROCNT)].standardError == 0.05);
    CHECK(own->food.profile[FAT] == 0.25);
    CHECK(own->food.profile.spread[indexOf(FAT)].assumedRelative == 0.39);
    CHECK(own->food.measures.front().standardDeviation == 2.5);
    CHECK(own->food.refuseNote == "stalks, leaves and core");
    CHECK(isOwn(own->food.row));
}

TEST_CASE("an empty field of an own food is missing and not zero", "[own]") {
    const OwnFood copy = copyOf(fennel());
    OwnFoodEntry entry = begun(copy);
    typed(entry, PROCNT) = " ";
    typed(entry, WATER) = "0";
    const auto own = ownFoodFrom(entry, copy, {});
    REQUIRE(own);
    CHECK_FALSE(own->food.profile[PROCNT]);
    CHECK_FALSE(own->food.profile.spread[indexOf(PROCNT)].standardError);
    CHECK(own->food.profile[WATER] == 0.0);
    CHECK(own->origin.changed == std::vector{WATER, PROCNT});
}

TEST_CASE("a value without a spread of its food takes the usual one, as assumed", "[own]") {
    PerComponent<std::optional<double>> usual{};
    usual[indexOf(WATER)] = 0.02;
    OwnFoodEntry entry = begun(copyOf(fennel()));
    typed(entry, WATER) = "90.2";
    const auto own = ownFoodFrom(entry, copyOf(fennel()), usual);
    REQUIRE(own);
    CHECK(own->food.profile.spread[indexOf(WATER)].assumedRelative == 0.02);
}

TEST_CASE("a changed energy does not stand beside its old value in the other unit", "[own]") {
    OwnFoodEntry entry = begun(copyOf(fennel()));
    typed(entry, ENERC_KCAL) = "27";
    const auto own = ownFoodFrom(entry, copyOf(fennel()), {});
    REQUIRE(own);
    CHECK(own->food.profile[ENERC_KCAL] == 27.0);
    CHECK_FALSE(own->food.profile[ENERC_KJ]);
    typed(entry, ENERC_KJ) = "113";
    CHECK(ownFoodFrom(entry, copyOf(fennel()), {})->food.profile[ENERC_KJ] == 113.0);
}

TEST_CASE("what cannot be in an own food is refused at its field", "[own]") {
    OwnFoodEntry entry = begun(copyOf(fennel()));
    SECTION("more than a hundred grams of a hundred") {
        typed(entry, FAT) = "100.5";
        CHECK(refusalOf(entry).code == ErrorCode::OutOfRange);
        CHECK(refusalOf(entry).pointer == "/components/FAT");
        CHECK(refusalOf(entry).value("high") == "100");
    }
    SECTION("more milligrams than a hundred grams are") {
        typed(entry, NA) = "100001";
        CHECK(refusalOf(entry).value("high") == "100000");
    }
    SECTION("kilojoules in the field of kilocalories") {
        typed(entry, ENERC_KCAL) = "3700";
        CHECK(refusalOf(entry).value("high") == "1000");
    }
    SECTION("less than nothing") {
        typed(entry, FAT) = "-1";
        CHECK(refusalOf(entry).code == ErrorCode::NegativeMass);
    }
    SECTION("a comma") {
        typed(entry, FAT) = "0,2";
        CHECK(refusalOf(entry).code == ErrorCode::NotADecimal);
    }
    SECTION("no source") {
        entry.source = "";
        CHECK(refusalOf(entry).code == ErrorCode::EmptyText);
        CHECK(refusalOf(entry).pointer == "/origin/source");
    }
    SECTION("no day") {
        entry.date = "2026-13-01";
        CHECK(refusalOf(entry).code == ErrorCode::NotADate);
    }
    SECTION("no reason for added sugars") {
        entry.addedSugarsReason = "";
        CHECK(refusalOf(entry).pointer == "/added_sugars/reason");
    }
    SECTION("stated added sugars without an amount") {
        entry.addedSugars = AddedSugarKind::Stated;
        CHECK(refusalOf(entry).pointer == "/added_sugars/per_100g");
    }
    SECTION("a measure that weighs nothing") {
        entry.measures.push_back({"1", "bulb", "", "0"});
        CHECK(refusalOf(entry).code == ErrorCode::NotPositive);
        CHECK(refusalOf(entry).pointer == "/measures/1/grams");
    }
    SECTION("a name that turns the writing round") {
        entry.name = "fen\u202enel";
        CHECK(refusalOf(entry).code == ErrorCode::TextNotClean);
    }
}

TEST_CASE("an own food reads back as it was written", "[own]") {
    const OwnFood copy = copyOf(fennel());
    OwnFoodEntry entry = begun(copy);
    entry.note = "from the garden";
    entry.measures.push_back({"1", "bulb", "", "231.5"});
    typed(entry, FAT) = "0.25";
    auto own = ownFoodFrom(entry, copy, {});
    REQUIRE(own);
    own->food.row = {"own", "1", "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2"};
    const Json json = ownFoodJson(*own);
    const auto again = readOwnFood(json);
    REQUIRE(again);
    CHECK(writeJson(ownFoodJson(*again)) == writeJson(json));
    CHECK(again->origin.note == "from the garden");
    CHECK(again->origin.changed == std::vector{FAT});
    CHECK(entryOf(*again).measures == entry.measures);
}

TEST_CASE("an own food without a source or with something else beside it is not read", "[own]") {
    OwnFood own;
    own.food = fennel();
    own.origin = {"grower's sheet", "2026-05-16", "", {}, "", {}};
    Json json = ownFoodJson(own);
    json.find("origin")->remove("source");
    CHECK(readOwnFood(json).error().value("key") == "source");
    json = ownFoodJson(own);
    json.find("origin")->set("date", Json{"yesterday"});
    CHECK(readOwnFood(json).error().code == ErrorCode::NotADate);
    json = ownFoodJson(own);
    json.find("food")->remove("name");
    CHECK(readOwnFood(json).error().value("key") == "name");
    json = ownFoodJson(own);
    json.set("more", Json{true});
    CHECK(readOwnFood(json).error().code == ErrorCode::UnknownKey);
}

namespace {

/// Fennel seed sweets: 100 kcal in 25 g, less than 1 g of fat, none of protein.
TableFood sweets() {
    TableFood food = fennel();
    LabelFacts label;
    label.servingSize = Decimal{25, 0};
    label.amounts = {{ENERC_KCAL, "100"}, {CHOCDF, "24"}, {PROCNT, "0"}};
    food.row = {"own", "2", "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2"};
    food.profile = labelProfile(label);
    food.label = std::move(label);
    return food;
}

}  // namespace

TEST_CASE("a copy of a labelled food leaves the label behind and keeps what it comes to",
          "[own][label]") {
    const OwnFood copy = copyOf(sweets());
    CHECK_FALSE(copy.food.label);
    CHECK(copy.origin.copiedFrom == sweets().row);
    CHECK(copy.food.profile[ENERC_KCAL] == 400.0);
    OwnFoodEntry entry = begun(copy);
    typed(entry, CHOCDF) = "95";
    const auto own = ownFoodFrom(entry, copy, {});
    REQUIRE(own);
    CHECK_FALSE(own->food.label);
    CHECK(own->food.profile[CHOCDF] == 95.0);
    CHECK(own->origin.changed == std::vector{CHOCDF});
}

TEST_CASE("what a label's rounding leaves open stays open in a copy", "[own][label]") {
    const Profile copied = copyOf(sweets()).food.profile;
    // 100 kcal stand for 95 to 105, 25 g for 24.5 to 25.5; a printed 0 has nothing to be
    // relative to.
    const double energy = 5 / 100.0;
    const double serving = 0.5 / 25;
    CHECK(*copied.spread[indexOf(ENERC_KCAL)].assumedRelative ==
          Approx(std::sqrt((energy * energy + serving * serving) / 3)));
    CHECK(copied[PROCNT] == 0.0);
    CHECK_FALSE(copied.spread[indexOf(PROCNT)].assumedRelative);
    TableFood spread = sweets();
    spread.label->declarationSpread = Decimal{2, -1};
    CHECK(*copyOf(spread).food.profile.spread[indexOf(ENERC_KCAL)].assumedRelative ==
          Approx(std::sqrt((energy * energy + serving * serving + 0.2 * 0.2) / 3)));
}

TEST_CASE("a label counts until a value is typed over it", "[own][label]") {
    OwnFood labelled;
    labelled.food = sweets();
    labelled.origin = {"package label", "2026-05-16", "", {}, "", {}};
    OwnFoodEntry entry = entryOf(labelled);
    entry.name = "fennel sweets";
    CHECK(ownFoodFrom(entry, labelled, {})->food.label);
    typed(entry, CHOCDF) = "95";
    const auto own = ownFoodFrom(entry, labelled, {});
    REQUIRE(own);
    CHECK_FALSE(own->food.label);
    CHECK(own->food.profile[ENERC_KCAL] == 400.0);
    CHECK(own->food.profile.spread[indexOf(ENERC_KCAL)].assumedRelative);
}

TEST_CASE("a day is a day of the calendar's form", "[text]") {
    CHECK(isDateForm("2026-05-16"));
    for (const char* no : {"", "2026-5-16", "2026-13-01", "2026-05-32", "16.05.2026",
                           "2026-05-16T12:00Z", "2026/05/16"})
        CHECK_FALSE(isDateForm(no));
}

TEST_CASE("what is typed anew is a day that there is", "[text]") {
    for (const char* day : {"2026-05-31", "2026-12-31", "2024-02-29", "2000-02-29"}) {
        INFO(day);
        CHECK(isCalendarDay(day));
    }
    for (const char* no : {"", "2026-05-16T12:00Z", "2026-02-31", "2026-02-29", "2026-04-31",
                           "1900-02-29", "2026-11-31"}) {
        INFO(no);
        CHECK_FALSE(isCalendarDay(no));
    }
    // A food that was kept with such a day is still read.
    CHECK(isDateForm("2026-02-31"));
}

}  // namespace nettare
