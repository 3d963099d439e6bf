#include "core/publish/panel_of.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// 300 g of a product whose invented label prints every line of the panel, 280 g when cooked.
Kitchen paste() {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",)"
                            R"("serving_grams":"30","serving":{"amount":"2","unit":"tbsp"},)"
                            R"("declares":[{"component":"ENERC_KCAL","printed":"70"},)"
                            R"({"component":"FAT","printed":"4.5"},)"
                            R"({"component":"FASAT","printed":"1"},)"
                            R"({"component":"FATRN","printed":"0"},)"
                            R"({"component":"CHOLE","printed":"10"},)"
                            R"({"component":"NA","printed":"140"},)"
                            R"({"component":"CHOCDF","printed":"6"},)"
                            R"({"component":"FIBTG","printed":"1"},)"
                            R"({"component":"SUGAR","printed":"2"},)"
                            R"({"component":"SUGAD","printed":"0"},)"
                            R"({"component":"PROCNT","printed":"3"},)"
                            R"({"component":"VITD","printed":"0"},)"
                            R"({"component":"CA","printed":"20"},)"
                            R"({"component":"FE","printed":"0.5"},)"
                            R"({"component":"K","printed":"60"}]}})");
    kitchen.line(R"({"id":"paste","amount":"300","unit":"g","food":"paste"})");
    kitchen.reading("dish", "280", "", "cooked");
    return kitchen.json("cooked", R"({"readings":["dish"]})");
}

Result<Panel> panelOf(const Kitchen& kitchen) {
    const Served served{kitchen};
    return usPanelOf(served.dossier, served.cooked);
}

std::string lineOf(const Panel& panel, Component component) {
    for (const auto* lines : {&panel.lines, &panel.vitamins})
        for (const PanelLine& line : *lines)
            if (line.component == component) return line.text();
    return {};
}

}  // namespace

TEST_CASE("the panel is of one portion of the cooked dish", "[publish]") {
    const auto panel = panelOf(paste());
    REQUIRE(panel);
    CHECK(panel->servings == "5 servings per container");
    CHECK(panel->servingHousehold == "2 pieces");
    CHECK(panel->servingMetric == "(56g)");  // a fifth of 280 g
    CHECK(panel->calories == "140");         // two label servings of 70 kcal
    CHECK(lineOf(*panel, Component::FAT) == "Total Fat 9g");
    CHECK(lineOf(*panel, Component::NA) == "Sodium 280mg");
    CHECK(lineOf(*panel, Component::FE) == "Iron 1mg");
}

TEST_CASE("a portion in grams makes as many servings as the cooked dish holds", "[publish]") {
    const auto panel = panelOf(paste().json("portion", R"({"grams":"100"})"));
    REQUIRE(panel);
    CHECK(panel->servings == "about 3 servings per container");  // 2.8, to the nearest half
    CHECK(panel->servingHousehold == "100 g");
    CHECK(panel->servingMetric == "(100g)");
}

TEST_CASE("a dish that was not weighed when cooked has no panel", "[publish]") {
    Kitchen raw;
    raw.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    const auto panel = panelOf(raw);
    REQUIRE_FALSE(panel);
    CHECK(panel.error().code == ErrorCode::PanelNeedsCookedWeight);
    CHECK(panel.error().file == "main");
    CHECK(panel.error().pointer == "/cooked");
}

TEST_CASE("a line that stays open names its food and its two ends", "[publish]") {
    // 200 g of oil without a trans fat value: at most 2.708 g per 100 g, a fifth of it a portion.
    const auto panel =
        panelOf(paste().line(R"({"id":"oil","amount":"200","unit":"g","food":"oil"})"));
    REQUIRE_FALSE(panel);
    CHECK(panel.error().code == ErrorCode::PanelLineOpen);
    CHECK(panel.error().file == "main");
    CHECK(panel.error().value("line") == "Trans Fat");
    CHECK(panel.error().value("food") == "oil");
    CHECK(panel.error().value("at_least") == "0");
    CHECK(panel.error().value("at_most") == "1.0832");
}

TEST_CASE("a missing part too small to move the print leaves the panel whole", "[publish]") {
    Kitchen kitchen = paste();
    kitchen.append("foods", R"({"id":"pinch","name":"pinch of the test","stated":[)"
                            R"({"component":"FAT","per_100g":"0","reason":"invented"},)"
                            R"({"component":"FASAT","per_100g":"0","reason":"invented"},)"
                            R"({"component":"ENERC_KCAL","per_100g":"0","reason":"invented"},)"
                            R"({"component":"CHOLE","per_100g":"0","reason":"invented"},)"
                            R"({"component":"NA","per_100g":"0","reason":"invented"},)"
                            R"({"component":"PROCNT","per_100g":"0","reason":"invented"},)"
                            R"({"component":"VITD","per_100g":"0","reason":"invented"},)"
                            R"({"component":"CA","per_100g":"0","reason":"invented"},)"
                            R"({"component":"FE","per_100g":"0","reason":"invented"},)"
                            R"({"component":"K","per_100g":"0","reason":"invented"}]})");
    kitchen.line(R"({"id":"pinch","amount":"0.1","unit":"g","food":"pinch"})");
    const Served served{kitchen};
    CHECK_FALSE(served.figure(Basis::Portion, Component::CHOCDF).complete());
    const auto panel = usPanelOf(served.dossier, served.cooked);
    REQUIRE(panel);
    CHECK(lineOf(*panel, Component::CHOCDF) == "Total Carbohydrate 12g");
}
