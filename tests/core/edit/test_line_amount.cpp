#include "core/edit/line_amount.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

std::string parts(const LineAmount& read) {
    return read.amount + "|" + read.unit.value_or("") + "|" + read.piece.value_or("");
}

std::string read(const std::string& typed, const std::string& piece = "") {
    return parts(readLineAmount(typed, piece));
}

LineEntry line(const std::string& amount, std::optional<std::string> unit,
               std::optional<std::string> piece) {
    LineEntry entry;
    entry.amount = amount;
    entry.unit = std::move(unit);
    entry.piece = std::move(piece);
    return entry;
}

}  // namespace

TEST_CASE("a typed amount is split into number and unit or piece word", "[edit]") {
    const std::pair<const char*, const char*> cases[] = {
        {"3 tbsp", "3|tbsp|"},
        {"400g", "400|g|"},
        {"1 1/2 cups", "1 1/2|cup|"},
        {"½ lemon", "½||lemon"},
        {"1½ tsp", "1½|tsp|"},
        {"2–3 cloves", "2–3||clove"},
        {"  2 bulbs ", "2||bulb"},
        {"2 large eggs", "2||large egg"},
        {"36", "36||"},
        {"0,5 L", "0,5|L|"},
        {"1 Tablespoon", "1|tbsp|"},
        {"8 ounces", "8|oz|"},
        {"2 lbs", "2|lb|"},
        {"2 fl oz", "2|fl oz|"},
        {"8 fluid ounces", "8|fl oz|"},
        {"1 imp pint", "1|imp pint|"},
        {"3 US pints", "3|us pint|"},
        {"2 pinches", "2|pinch|"},
        {"2 gallons", "2|gal|"},
        {"2 sticks", "2||stick"},
        {"3 eggs", "3||egg"},
        {"3 crêpes", "3||crêpe"},
        {"a pinch", "a pinch||"},
        {"3 tbsp 2", "3 tbsp 2||"},
        {"", "||"},
    };
    for (const auto& [typed, wanted] : cases) {
        INFO(typed);
        CHECK(read(typed) == wanted);
    }
}

TEST_CASE("a pack's content and the fill of a spoon are read, and shown as they are typed",
          "[edit]") {
    const LineAmount tins = readLineAmount("2 x 400 g tins");
    CHECK(parts(tins) == "2||tin");
    REQUIRE(tins.each);
    CHECK(tins.each->amount == "400");
    CHECK(tins.each->unit == "g");
    const LineAmount spoon = readLineAmount("1 heaping tbsp");
    CHECK(parts(spoon) == "1|tbsp|");
    CHECK(spoon.fill == "heaping");

    LineEntry packed = line("2", {}, "tin");
    packed.each = MeasuredAmount{"400", "g"};
    CHECK(lineAmountText(packed, "tomatoes") == "2 x 400 g tins");
    LineEntry heaped = line("1", "tbsp", {});
    heaped.fill = Fill::Heaping;
    CHECK(lineAmountText(heaped, "flour") == "1 heaping tbsp");
    LineEntry salt;
    salt.toTaste = true;
    CHECK(lineAmountText(salt, "salt") == "to taste");
}

TEST_CASE("the piece word that the line has stays as it is", "[edit]") {
    CHECK(read("3 prawns", "prawn") == "3||prawn");
    CHECK(read("1 clove", "cloves") == "1||cloves");
    CHECK(read("3 bulbs", "prawn") == "3||bulb");
}

TEST_CASE("an amount is shown as a cook would write it", "[edit]") {
    CHECK(lineAmountText(line("2", {}, "bulb"), "fennel") == "2 bulbs");
    CHECK(lineAmountText(line("½", {}, "lemon"), "lemon juice") == "½ lemon");
    CHECK(lineAmountText(line("1/2-2", {}, "clove"), "garlic") == "1/2-2 cloves");
    CHECK(lineAmountText(line("3", "tbsp", {}), "olive oil") == "3 tbsp");
    CHECK(lineAmountText(line("36", {}, "prawn"), "prawns") == "36");
    CHECK(lineAmountText(line("2", {}, "egg"), "egg, whole") == "2");
    CHECK(lineAmountText(line("a pinch", {}, "bulb"), "fennel") == "a pinch");
}
