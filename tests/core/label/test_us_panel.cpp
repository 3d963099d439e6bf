#include <catch2/catch.hpp>

#include "core/label/us_panel.h"

using namespace nettare;

namespace {

OpenAmount known(double amount) {
    return {amount, amount, {}};
}

/// Amounts of the sample panel in (d)(8), as quoted second-hand, before any rounding.
UsPanelInput samplePanelInput() {
    UsPanelInput input;
    const std::pair<Component, double> amounts[] = {
        {Component::ENERC_KCAL, 232}, {Component::FAT, 8},    {Component::FASAT, 1},
        {Component::FATRN, 0},        {Component::CHOLE, 0},  {Component::NA, 160},
        {Component::CHOCDF, 37},      {Component::FIBTG, 4},  {Component::SUGAR, 12},
        {Component::SUGAD, 10},       {Component::PROCNT, 3}, {Component::VITD, 2},
        {Component::CA, 260},         {Component::FE, 8},     {Component::K, 235},
        {Component::FAPU, 2.3},       {Component::FAMS, 4.6},
    };
    for (const auto& [component, amount] : amounts)
        input.perServing[indexOf(component)] = known(amount);
    input.servings = 8;
    input.household = "2/3 cup";
    input.servingGrams = 55;
    return input;
}

std::string written(const PanelLine& line) {
    return std::string(static_cast<std::size_t>(line.indent), '>') + (line.bold ? "*" : "") +
           line.text() + (line.percent ? " " + *line.percent : "");
}

std::vector<std::string> written(const std::vector<PanelLine>& lines) {
    std::vector<std::string> texts;
    texts.reserve(lines.size());
    for (const PanelLine& line : lines) texts.push_back(written(line));
    return texts;
}

Error openError(Component component, const OpenAmount& amount) {
    UsPanelInput input = samplePanelInput();
    input.perServing[indexOf(component)] = amount;
    const auto panel = usPanel(input);
    REQUIRE_FALSE(panel);
    return panel.error();
}

}  // namespace

TEST_CASE("the sample label of the regulation prints line by line", "[label]") {
    const auto panel = usPanel(samplePanelInput());
    REQUIRE(panel);
    CHECK(panel->title == "Nutrition Facts");
    CHECK(panel->servings == "8 servings per container");
    CHECK(panel->servingSizeHead == "Serving size");
    CHECK(panel->servingHousehold == "2/3 cup");
    CHECK(panel->servingMetric == "(55g)");
    CHECK(panel->amountHead == "Amount per serving");
    CHECK(panel->caloriesName + " " + panel->calories == "Calories 230");
    CHECK(panel->percentHead == "% Daily Value*");
    CHECK(written(panel->lines) ==
          std::vector<std::string>{
              "*Total Fat 8g 10%", ">Saturated Fat 1g 5%", ">Trans Fat 0g", "*Cholesterol 0mg 0%",
              "*Sodium 160mg 7%", "*Total Carbohydrate 37g 13%", ">Dietary Fiber 4g 14%",
              ">Total Sugars 12g", ">>Includes 10g Added Sugars 20%", "*Protein 3g"});
    // The sample itself prints 235 mg of potassium; the step of 10 mg is FDA's recommendation.
    CHECK(written(panel->vitamins) == std::vector<std::string>{"Vitamin D 2mcg 10%",
                                                               "Calcium 260mg 20%", "Iron 8mg 45%",
                                                               "Potassium 240mg 6%"});
}

TEST_CASE("the panel ends with both sentences of the footnote and says what it is not", "[label]") {
    const auto panel = usPanel(samplePanelInput());
    REQUIRE(panel);
    // 21 CFR 101.9(d)(9)
    CHECK(panel->footnote ==
          "*The % Daily Value tells you how much a nutrient in a serving of food contributes to a "
          "daily diet. 2,000 calories a day is used for general nutrition advice.");
    CHECK(panel->caution == "Calculated from recipe data. Not a compliance statement.");
}

TEST_CASE("the two voluntary fats stand below trans fat and have no percent", "[label]") {
    UsPanelInput input = samplePanelInput();
    input.polyAndMono = true;
    const auto panel = usPanel(input);
    REQUIRE(panel);
    CHECK(panel->lines.size() == 12);
    CHECK(written(panel->lines[3]) == ">Polyunsaturated Fat 2.5g");
    CHECK(written(panel->lines[4]) == ">Monounsaturated Fat 4.5g");
}

TEST_CASE("less than one gram prints in words, also of added sugars", "[label]") {
    UsPanelInput input = samplePanelInput();
    input.perServing[indexOf(Component::SUGAD)] = known(0.7);
    input.perServing[indexOf(Component::CHOLE)] = known(3);
    const auto panel = usPanel(input);
    REQUIRE(panel);
    CHECK(written(panel->lines[3]) == "*Cholesterol less than 5mg 1%");
    CHECK(written(panel->lines[8]) == ">>Includes less than 1g Added Sugars 1%");
}

TEST_CASE("one serving is singular and a rounded number of servings is about", "[label]") {
    UsPanelInput input = samplePanelInput();
    input.servings = 1;
    CHECK(usPanel(input)->servings == "1 serving per container");
    input.servings = 1.2;
    CHECK(usPanel(input)->servings == "about 1 serving per container");
    input.servings = 3.4;
    CHECK(usPanel(input)->servings == "about 3.5 servings per container");
}

TEST_CASE("a line prints where both ends of its amount print the same", "[label]") {
    UsPanelInput input = samplePanelInput();
    input.perServing[indexOf(Component::FATRN)] = {0, 0.3, {"shrimp"}};
    input.perServing[indexOf(Component::CA)] = {256, 262, {"lime leaf"}};
    const auto panel = usPanel(input);
    REQUIRE(panel);
    CHECK(written(panel->lines[2]) == ">Trans Fat 0g");
    CHECK(written(panel->vitamins[1]) == "Calcium 260mg 20%");
}

TEST_CASE("an open line names its ends and the foods that leave it open", "[label]") {
    const Error open = openError(Component::FATRN, {0.25, 0.75, {"shrimp", "fish sauce"}});
    CHECK(open.code == ErrorCode::PanelLineOpen);
    CHECK(open.value("line") == "Trans Fat");
    CHECK(open.value("at_least") == "0.25");
    CHECK(open.value("at_most") == "0.75");
    CHECK(open.value("unit") == "g");
    CHECK(open.value("food") == "shrimp");
    CHECK(open.values.back().text == "fish sauce");
    const Error unbounded = openError(Component::VITD, {2, std::nullopt, {"shrimp"}});
    CHECK(unbounded.code == ErrorCode::PanelLineOpen);
    CHECK(unbounded.value("at_most") == "unknown");
    CHECK(openError(Component::ENERC_KCAL, OpenAmount{}).value("line") == "Calories");
}

TEST_CASE("a line whose ends differ only in percent is open", "[label]") {
    // Both print "less than 1g"; 0.5 g is 2 % and 0.9 g is 3 % of 28 g.
    CHECK(openError(Component::FIBTG, {0.5, 0.9, {"chive"}}).code == ErrorCode::PanelLineOpen);
}

TEST_CASE("a panel is refused without a serving or with an amount that cannot be", "[label]") {
    UsPanelInput input = samplePanelInput();
    input.household = "  ";
    CHECK(usPanel(input).error().code == ErrorCode::EmptyText);
    input.household = "2 skewers";
    input.servings = 0;
    CHECK(usPanel(input).error().code == ErrorCode::NotPositive);
    input.servings = 4;
    input.servingGrams = -1;
    CHECK(usPanel(input).error().value("line") == "Serving size");
    CHECK(openError(Component::FAT, {8, 7, {}}).code == ErrorCode::RangeReversed);
    CHECK(openError(Component::FAT, {-1, 7, {}}).code == ErrorCode::OutOfRange);
}
