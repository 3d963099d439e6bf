#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "db/import/csv_mapping.h"
#include "db/import/guess_header.h"
#include "scratch.h"

namespace nettare {

namespace {

/// "PROCNT g", "FE" without a unit, or "?" for a header that tells nothing.
std::string guessed(std::string_view header) {
    const auto guess = guessHeader(header);
    if (!guess) return "?";
    const std::string tagname{factsOf(guess->component).tagname};
    return guess->unit.empty() ? tagname : tagname + " " + guess->unit;
}

}  // namespace

TEST_CASE("usual headers tell their component and unit", "[import]") {
    CHECK(guessed("Protein (g)") == "PROCNT g");
    CHECK(guessed("Energy, kJ") == "ENERC_KJ kJ");
    CHECK(guessed("Energy (kcal/100 g)") == "ENERC_KCAL kcal");
    CHECK(guessed("Sodium mg") == "NA mg");
    CHECK(guessed("Calcium, Ca [mg/100g]") == "CA mg");
    CHECK(guessed("Total fat (g per 100 g)") == "FAT g");
    CHECK(guessed("Fatty acids, total saturated (g)") == "FASAT g");
    CHECK(guessed("Folate, DFE (µg)") == "FOLDFE µg");
    CHECK(guessed("Vitamin B12 mcg") == "VITB12 µg");
    CHECK(guessed("of which sugars (g)") == "SUGAR g");
    CHECK(guessed("Moisture; water") == "WATER");
}

TEST_CASE("mg behind magnesium is taken for its unit only in brackets", "[import]") {
    CHECK(guessed("Magnesium, Mg (mg)") == "MG mg");
    CHECK(guessed("MG (mg)") == "MG mg");
    CHECK(guessed("Magnesium (Mg); mg") == "MG");
    CHECK(guessed("Magnesium mg") == "MG");
    CHECK(guessed("Magnesium g") == "MG g");
}

TEST_CASE("INFOODS tagnames tell their component, and a unit only where one stands there",
          "[import]") {
    for (const ComponentFacts& facts : allComponents()) {
        const std::string tagname{facts.tagname};
        const std::string unit{facts.unit};
        CHECK(guessed(fmt::format("{} ({})", tagname, unit)) ==
              fmt::format("{} {}", tagname, unit));
    }
    CHECK(guessed("PROCNT") == "PROCNT");
    CHECK(guessed("ENERC_KCAL") == "ENERC_KCAL kcal");
    CHECK(guessed("MG") == "MG");
    CHECK(guessed("Mg mg") == "?");
}

TEST_CASE("a header that can mean two things is not guessed", "[import]") {
    for (const char* header :
         {"Energy", "Carbohydrate (g)", "Vitamin A (µg)", "Vitamin E (mg)", "Vitamin D (IU)",
          "Salt (g)", "Energy (g)", "Sodium (kcal)", "Remarks", "", "g"})
        CHECK(guessed(header) == "?");
}

TEST_CASE("a mapping is guessed from a file: separator, decimal comma, columns and its name",
          "[import]") {
    const Scratch scratch;
    scratch.write("Village table_2024.csv",
                  "Code;Food name;Food group;Protein (g);Sodium mg;Iron;Carbohydrate (g)\n"
                  "A1;\"Leek; raw\";Vegetables;1,5;20;2,1;14\n"
                  "A2;Barley;Cereals;12,5;12;3,6;70\n");
    const auto mapping = guessCsvMapping(scratch.path("Village table_2024.csv"));
    REQUIRE(mapping);
    CHECK(mapping->table == "village-table");
    CHECK(mapping->release == "2024");
    CHECK(mapping->separator == ';');
    CHECK(mapping->decimalSign == ',');
    CHECK(mapping->numberColumn == "Code");
    CHECK(mapping->nameColumn == "Food name");
    CHECK(mapping->groupColumn == "Food group");
    REQUIRE(mapping->components.size() == 3);
    CHECK(mapping->components[1].column == "Sodium mg");
    CHECK(mapping->components[1].unit == "mg");
    CHECK(mapping->components[2].component == Component::FE);
    CHECK(mapping->components[2].unit.empty());
}

TEST_CASE("a preview shows the headers and ten rows as they are", "[import]") {
    const Scratch scratch;
    std::string text = "name,note\n";
    for (int i = 0; i < 30; ++i) text += "food,\"a, b\"\n";
    scratch.write("many.csv", text);
    const auto preview = csvPreview(scratch.path("many.csv"), ',', 10);
    REQUIRE(preview);
    REQUIRE(preview->size() == 11);
    CHECK(preview->front() == std::vector<std::string>{"name", "note"});
    CHECK(preview->back() == std::vector<std::string>{"food", "a, b"});

    scratch.write("empty.csv", "");
    const auto empty = csvPreview(scratch.path("empty.csv"), ',', 10);
    REQUIRE_FALSE(empty);
    CHECK(empty.error().code == ErrorCode::CsvNoHeader);
    const auto absent = guessCsvMapping(scratch.path("absent.csv"));
    REQUIRE_FALSE(absent);
    CHECK(absent.error().code == ErrorCode::FileNotReadable);
}

}  // namespace nettare
