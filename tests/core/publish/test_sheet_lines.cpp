#include "core/publish/sheet_lines.h"

#include <catch2/catch.hpp>

#include "compared_kitchens.h"

using namespace kitchen;

namespace {

std::vector<SheetLine> linesOf(const Kitchen& kitchen) {
    const ServedState state{kitchen};
    return sheetLines(state.document, state.served.dossier, state.served.cooked);
}

}  // namespace

TEST_CASE("the ingredient table shows what a line weighs and how that was found", "[publish]") {
    Kitchen kitchen = dish("3", "2");
    kitchen.reading("left", "8", "", "residue");
    kitchen.append("residues", R"({"line":"oil","readings":["left"]})");
    const auto lines = linesOf(kitchen);
    REQUIRE(lines.size() == 3);
    const SheetLine& oil = lines[0];
    CHECK(oil.amount == "3 tbsp");
    CHECK(oil.way == Way::Table);
    CHECK(oil.spreadAssumed);
    CHECK(oil.grams == Approx(3 * 13.5 - 8));
    CHECK(oil.leftOver == Approx(8));
    CHECK(oil.kcal == Approx(oil.grams * 8.84));
    CHECK(oil.kcalComplete);
    CHECK(oil.kcalAtMost == oil.kcal);
    const SheetLine& fennel = lines[2];
    CHECK(fennel.amount == "2 bulbs");
    CHECK(fennel.way == Way::Weighed);
    CHECK(fennel.readings == 1);
    // Two indications on a scale of 1 g: 1.96 sqrt(2/12).
    CHECK(fennel.halfWidth == Approx(1.96 * std::sqrt(2.0 / 12)).epsilon(1e-3));
    CHECK(oil.energyShare + lines[1].energyShare + fennel.energyShare == Approx(1));
    CHECK(oil.energyShare > 0.5);
}

TEST_CASE("a weighed line of another amount says that it is scaled", "[publish]") {
    Kitchen kitchen;
    kitchen.reading("bulbs", "400");
    kitchen.line(R"({"id":"fennel","amount":"3","piece":"bulb","food":"fennel",)"
                 R"("weighed":["bulbs"],"weighed_for":"2"})");
    const auto lines = linesOf(kitchen);
    CHECK(lines[0].scaled);
    CHECK(lines[0].grams == Approx(600));
}

TEST_CASE("a line that uses a kept recipe has the energy of all in it", "[publish]") {
    Kitchen sauce;
    sauce.line(R"({"id":"oil","amount":"30","unit":"g","food":"oil"})");
    sauce.line(R"({"id":"sugar","amount":"10","unit":"g","food":"sugar"})");
    Kitchen menu;
    menu.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce.json"})");
    menu.kept("sauce.json", sauce);
    menu.line(R"({"id":"sauce","amount":"20","unit":"g","food":"sauce"})");
    menu.line(R"({"id":"sauce-oil","amount":"5","unit":"g","food":"oil"})");
    const auto lines = linesOf(menu);
    CHECK_FALSE(lines[0].way);
    CHECK(lines[0].grams == Approx(20));
    CHECK(lines[0].kcal == Approx(15 * 8.84 + 5 * 3.87));
    CHECK(lines[1].kcal == Approx(5 * 8.84));
}

TEST_CASE("a food without energy leaves the energy of its line open", "[publish]") {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"own","name":"own","stated":[{"component":"NA",)"
                            R"("per_100g":"1","reason":"test"}]})");
    kitchen.line(R"({"id":"own","amount":"50","unit":"g","food":"own"})");
    kitchen.line(R"({"id":"oil","amount":"10","unit":"g","food":"oil"})");
    const auto lines = linesOf(kitchen);
    CHECK_FALSE(lines[0].kcalComplete);
    CHECK(lines[0].kcalAtLeast == 0);
    CHECK_FALSE(lines[0].kcalAtMost == std::optional{0.0});
    CHECK(lines[1].kcalComplete);
}
