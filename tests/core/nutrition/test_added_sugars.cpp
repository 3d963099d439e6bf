#include <catch2/catch.hpp>
#include <cmath>

#include "core/publish/panel_of.h"
#include "kitchen.h"

namespace nettare {

namespace {

using enum Component;
using kitchen::Kitchen;
using kitchen::Served;

/// 400 g of syrup of 40 g sugar in 100 g, of which so much is said to be added.
Kitchen syrup(const std::string& addedSugars) {
    Kitchen kitchen;
    const std::string said =
        addedSugars.empty() ? std::string{} : R"(,"added_sugars":)" + addedSugars;
    kitchen.append("foods", R"({"id":"syrup","name":"plum syrup","label":{"rules":"eu","per":"100g",
        "declares":[{"component":"SUGAR","printed":"40"},{"component":"CHOAVL","printed":"41"},
        {"component":"FIBTG","printed":"0"}]})" +
                                said + "}");
    kitchen.line(R"({"id":"s","amount":"400","unit":"g","food":"syrup"})");
    return kitchen;
}

Figure addedOf(const Kitchen& kitchen) {
    return Served{kitchen}.figure(Basis::Batch, SUGAD);
}

}  // namespace

TEST_CASE("a recipe's added sugars go by what is said of each food", "[nutrition][sugars]") {
    const Figure none = addedOf(syrup(R"({"kind":"none","reason":"fruit only"})"));
    CHECK(none.complete());
    CHECK(none.value == 0);
    const Figure all = addedOf(syrup(R"({"kind":"all","reason":"sugar and water"})"));
    CHECK(all.value == Approx(160));
    const Figure stated =
        addedOf(syrup(R"({"kind":"stated","per_100g":"25","reason":"own recipe"})"));
    CHECK(stated.value == Approx(100));
    const Figure between = addedOf(syrup(R"({"kind":"between","reason":"nobody says"})"));
    CHECK_FALSE(between.complete());
    CHECK(between.atLeast == 0);
    // 40 g stand for 39.5 to 40.5 (Commission guidance of December 2012).
    CHECK(*between.atMost == Approx(4 * 40.5));
    CHECK(*addedOf(syrup("")).atMost == Approx(4 * 40.5));
}

TEST_CASE("a stated amount of added sugars is as fine as its last digit", "[nutrition][sugars]") {
    const Served served{syrup(R"({"kind":"stated","per_100g":"25","reason":"own recipe"})")};
    const double grams = served.cooked.lines[0].ways.way().grams.uncertainty();
    CHECK(served.figure(Basis::Batch, SUGAD).u ==
          Approx(std::hypot(4 * 1 / std::sqrt(12.0), 0.25 * grams)));
}

TEST_CASE("no food has more added sugars than sugars", "[nutrition][sugars]") {
    const auto tooMuch = syrup(R"({"kind":"stated","per_100g":"45","reason":"own recipe"})");
    const auto cooked = cook(Served::orThrow(tooMuch.dossier()));
    REQUIRE_FALSE(cooked);
    CHECK(cooked.error().code == ErrorCode::AddedSugarsAboveSugars);
    CHECK(cooked.error().value("found") == "45");
    CHECK(cooked.error().value("most") == "40.5");
    CHECK(cooked.error().value("food") == "plum syrup");
    CHECK(cooked.error().pointer == "/foods/3/added_sugars");
    // As much as the rounding of both allows passes, and is all of its sugars.
    const Served rounded{syrup(R"({"kind":"stated","per_100g":"41","reason":"own recipe"})")};
    CHECK(rounded.figure(Basis::Batch, SUGAD).value == rounded.figure(Basis::Batch, SUGAR).value);
    CHECK(rounded.figure(Basis::Batch, SUGAD).u == rounded.figure(Basis::Batch, SUGAR).u);
}

TEST_CASE("added sugars come through a kept recipe, with what is open of them",
          "[nutrition][sugars]") {
    const auto dish = [](const std::string& said) {
        Kitchen kitchen;
        kitchen.kept("syrup.json", syrup(said));
        kitchen.append("foods", R"({"id":"compote","name":"compote","recipe":"syrup.json"})");
        kitchen.line(R"({"id":"c","amount":"100","unit":"g","food":"compote"})");
        return kitchen;
    };
    // A quarter of the batch of 400 g.
    CHECK(addedOf(dish(R"({"kind":"all","reason":"sugar and water"})")).value == Approx(40));
    const Figure open = addedOf(dish(R"({"kind":"between","reason":"nobody says"})"));
    CHECK(open.atLeast == 0);
    CHECK(*open.atMost == Approx(40.5));
}

TEST_CASE("the panel prints added sugars once their ends round alike, and else asks",
          "[publish][sugars]") {
    const auto panel = [](const std::string& said) {
        Kitchen kitchen;
        kitchen.append("foods", R"({"id":"jam","name":"plum jam","label":{"rules":"us",
            "serving_grams":"20","serving":{"amount":"1","unit":"tbsp"},"declares":[
            {"component":"ENERC_KCAL","printed":"50"},{"component":"FAT","printed":"0"},
            {"component":"FASAT","printed":"0"},{"component":"FATRN","printed":"0"},
            {"component":"CHOLE","printed":"0"},{"component":"NA","printed":"0"},
            {"component":"CHOCDF","printed":"13"},{"component":"FIBTG","printed":"0"},
            {"component":"SUGAR","printed":"12"},{"component":"PROCNT","printed":"0"},
            {"component":"VITD","printed":"0"},{"component":"CA","printed":"0"},
            {"component":"FE","printed":"0"},{"component":"K","printed":"0"}]},
            "added_sugars":)" + said +
                                    "}");
        kitchen.line(R"({"id":"j","amount":"200","unit":"g","food":"jam"})");
        kitchen.reading("dish", "200", "", "cooked");
        const Served served{kitchen.json("cooked", R"({"readings":["dish"]})")};
        return usPanelOf(served.dossier, served.cooked);
    };
    const auto all = panel(R"({"kind":"all","reason":"sugar"})");
    REQUIRE(all);
    std::string printed;
    for (const PanelLine& line : all->lines)
        if (line.component == SUGAD) printed = line.text();
    CHECK(printed == "Includes 24g Added Sugars");
    const auto open = panel(R"({"kind":"between","reason":"nobody says"})");
    REQUIRE_FALSE(open);
    CHECK(open.error().code == ErrorCode::PanelLineOpen);
    CHECK(open.error().value("component") == "SUGAD");
    CHECK(open.error().value("food") == "plum jam");
}

}  // namespace nettare
