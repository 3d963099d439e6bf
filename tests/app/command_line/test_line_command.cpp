#include <catch2/catch.hpp>

#include "command_line/scratch_kitchen.h"

namespace {

std::string lineOf(const std::string& text, const std::string& measures = "us") {
    const Outcome outcome = run({"line", text, "--measures", measures});
    INFO(outcome.err);
    CHECK(outcome.code == 0);
    return outcome.out;
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a line is shown field by field, with every way to its grams", "[commandline]") {
    const std::string garlic = lineOf("2 cloves garlic, sliced");
    CHECK(
        garlic.starts_with("  amount       2\n"
                           "  piece        clove\n"
                           "  food         garlic\n"
                           "  preparation  sliced\n"
                           "garlic, raw (usda-sr 28 11215)\n"));
    // USDA SR28, measures of 11215: 1 clove = 3 g.
    CHECK(holds(garlic,
                "> table        6.00 g ± 1.68   2 cloves × 3 g (usda-sr 28 11215: 1 clove = "
                "3 g); the table gives no spread, 14 % is assumed\n"));
}

TEST_CASE("what has two meanings is shown for both", "[commandline]") {
    const std::string milk = lineOf("8 oz milk");
    CHECK(holds(milk, "  unit         oz or fl oz?\n"));
    // 8 x 28.349523125 g (NIST Handbook 44); 8 x 30.5 g (USDA SR28, 01077: 1 fl oz = 30.5 g)
    CHECK(holds(milk, "if 8 oz:\n  > assumed       227 g"));
    CHECK(holds(milk, "if 8 fl oz:\n  > table         244 g"));
    const std::string flour = lineOf("1,500 g flour");
    CHECK(holds(flour, "1 1/2 or 1500? (“1,500” can be read both ways)"));
    CHECK(holds(flour, "if 1500 g:"));
}

TEST_CASE("packs, sizes of things and fills find their grams", "[commandline]") {
    CHECK(holds(lineOf("2 x 400 g tins tomatoes", "metric"), "> label         800 g"));
    CHECK(holds(lineOf("butter the size of a walnut"), "> assumed      21.6 g"));
    CHECK(holds(lineOf("1 heaping tbsp flour"), "heaping: × 1.25 to 2 (common practice)"));
    // USDA SR28, 01123: 1 large egg = 50 g.
    CHECK(holds(lineOf("3 large eggs"), "> table         150 g"));
    CHECK(holds(lineOf("juice of 1/2 lemon"), "1 lemon, juice of one = 48 g"));
}

TEST_CASE("a volume is measured with cups and spoons, and the error is said", "[commandline]") {
    // A cup is 236.5882365 mL, a teaspoon 4.92892159375 mL (NIST Handbook 44): 248.91 mL together.
    CHECK(holds(lineOf("250 ml milk"), "  measured as  1 cup plus 2 1/2 tsp, 0.4 % less\n"));
    CHECK_FALSE(holds(lineOf("1 cup milk"), "measured as"));
    CHECK(holds(lineOf("500 ml milk", "metric"), "  measured as  2 cups, exactly\n"));
}

TEST_CASE("a pint is that of the measures, and none in a metric kitchen", "[commandline]") {
    CHECK(holds(lineOf("1 pint milk", "imperial"), "pint"));
    CHECK(holds(lineOf("1 pint milk", "metric"), "have no “pint”"));
    CHECK(holds(lineOf("1 imp pint milk", "metric"), "> density"));
}

TEST_CASE("salt to taste has no amount, and a temperature is converted", "[commandline]") {
    CHECK(holds(lineOf("salt to taste"), "  marked       to taste\n"));
    CHECK(holds(lineOf("gas mark 6"), "gas mark 6 = 400 °F = 204.44 °C"));
}

TEST_CASE("a food that no table has is said, and an empty line refused", "[commandline]") {
    CHECK(holds(lineOf("2 cups moon dust"), "No food of the table matches"));
    const Outcome empty = run({"line", " "});
    CHECK(empty.code == 1);
    CHECK(empty.err == "nettare: LINE: the text is empty; write what is meant.\n");
    CHECK(run({"--kitchen", "x.nettare", "line", "1 egg"}).code == 2);
}
