#include "core/wording/read_line.h"

#include <catch2/catch.hpp>

#include "core/wording/line_tokens.h"
#include "line_cases.h"

using namespace nettare;

namespace {

/// Reads the line and compares all its fields, each given as in the case files.
void checkLine(const std::string& text, const LineFields& fields) {
    CAPTURE(text);
    const LineReading reading = readLine(text);
    CHECK(differences(fields, fieldsOf(reading)).empty());
    CHECK(writtenParts(reading) == text);
}

std::string partOf(const LineReading& reading, LinePartKind kind) {
    for (const LinePart& part : reading.parts)
        if (part.kind == kind) return reading.text.substr(part.begin, part.end - part.begin);
    return {};
}

}  // namespace

TEST_CASE("a line is amount, unit, food and preparation", "[lines]") {
    checkLine("1/3 cup tahini, stirred",
              {{"amount", "1/3"}, {"unit", "cup"}, {"food", "tahini"}, {"prep", "stirred"}});
    checkLine("100g", {{"amount", "100"}, {"unit", "g"}});
    checkLine("2T. sugar", {{"amount", "2"}, {"unit", "tbsp"}, {"food", "sugar"}});
    checkLine("1 or 2 cloves garlic crushed",
              {{"amount", "1-2"}, {"piece", "clove"}, {"food", "garlic"}, {"prep", "crushed"}});
    checkLine("Kosher salt", {{"food", "Kosher salt"}});
}

TEST_CASE("a line that names its food first has its amount behind", "[lines]") {
    checkLine("flour - 200 g", {{"amount", "200"}, {"unit", "g"}, {"food", "flour"}});
    checkLine("butter 50 g", {{"amount", "50"}, {"unit", "g"}, {"food", "butter"}});
    checkLine("eggs: 3", {{"amount", "3"}, {"food", "eggs"}});
}

TEST_CASE("what one tin holds is told apart from the amount said again", "[lines]") {
    checkLine("2 x 400 g tins", {{"amount", "2"}, {"piece", "tin"}, {"each", "400 g"}});
    checkLine(
        "half a 400g/14oz tin chickpeas",
        {{"amount", "1/2"}, {"piece", "tin"}, {"each", "400 g, 14 oz"}, {"food", "chickpeas"}});
    checkLine("1 (3- to 4-pound) chicken",
              {{"amount", "1"}, {"each", "3-4 lb"}, {"food", "chicken"}});
    checkLine(
        "4 medium potatoes (about 2 pounds total)",
        {{"amount", "4"}, {"equals", "about 2 lb"}, {"size", "medium"}, {"food", "potatoes"}});
    checkLine("a cup and a half of milk", {{"amount", "1 1/2"}, {"unit", "cup"}, {"food", "milk"}});
}

TEST_CASE("an ounce is asked unless its neighbours decide it", "[lines]") {
    checkLine("8 oz cream", {{"amount", "8"}, {"unit", "oz?"}, {"food", "cream"}});
    checkLine("8 oz (225 g) cream",
              {{"amount", "8"}, {"unit", "oz"}, {"equals", "225 g"}, {"food", "cream"}});
    checkLine("8 oz (1 cup) cream",
              {{"amount", "8"}, {"unit", "oz?"}, {"equals", "1 cup"}, {"food", "cream"}});
    checkLine("8 fl. oz. cream", {{"amount", "8"}, {"unit", "fl oz"}, {"food", "cream"}});
}

TEST_CASE("a stick is a unit of butter and a piece of all else", "[lines]") {
    checkLine("1 cup (2 sticks) butter",
              {{"amount", "1"}, {"unit", "cup"}, {"equals", "2 stick"}, {"food", "butter"}});
    checkLine("2 sticks celery", {{"amount", "2"}, {"piece", "stick"}, {"food", "celery"}});
    checkLine("200 g celery (2 sticks)",
              {{"amount", "200"}, {"unit", "g"}, {"equals", "2 sticks"}, {"food", "celery"}});
}

TEST_CASE("two foods that share a noun both get it", "[lines]") {
    checkLine("1 tbsp olive or vegetable oil",
              {{"amount", "1"}, {"unit", "tbsp"}, {"food", "olive oil"}, {"or", "vegetable oil"}});
    checkLine("1 tbsp butter or olive oil",
              {{"amount", "1"}, {"unit", "tbsp"}, {"food", "butter"}, {"or", "olive oil"}});
    checkLine("1 medium or 2 small onions",
              {{"amount", "1"}, {"size", "medium"}, {"food", "onions"}, {"or", "2 small onions"}});
}

TEST_CASE("what is taken of a piece makes the food", "[lines]") {
    checkLine("juice and finely grated zest of 1 unwaxed lemon",
              {{"amount", "1"},
               {"piece", "lemon"},
               {"food", "unwaxed lemon juice and zest"},
               {"prep", "finely grated"}});
    checkLine("leaves picked from 3 thyme sprigs",
              {{"amount", "3"}, {"piece", "sprig"}, {"food", "thyme leaves"}, {"prep", "picked"}});
    checkLine("zest of lemon", {{"food", "zest of lemon"}});
}

TEST_CASE("what is not understood is shown as the rest", "[lines]") {
    checkLine("1) 1 cup rice** [3]",
              {{"amount", "1"}, {"unit", "cup"}, {"food", "rice"}, {"rest", "1) ** [3]"}});
    checkLine("1/2 tsp each salt and pepper",
              {{"amount", "1/2"}, {"unit", "tsp"}, {"food", "salt and pepper"}, {"rest", "each"}});
    checkLine("3-2 eggs", {{"amount", "3"}, {"food", "-2 eggs"}});
}

TEST_CASE("every byte of a line is in one part, in order", "[lines]") {
    const LineReading reading = readLine("- 1 (14.5 oz) can  tomatoes, drained");
    CHECK(partOf(reading, LinePartKind::Rest) == "-");
    CHECK(partOf(reading, LinePartKind::Each) == "(14.5 oz)");
    CHECK(partOf(reading, LinePartKind::Piece) == "can");
    CHECK(partOf(reading, LinePartKind::Food) == "tomatoes");
    CHECK(partOf(reading, LinePartKind::Preparation) == ", drained");
    std::size_t end = 0;
    for (const LinePart& part : reading.parts) {
        CHECK(part.begin == end);
        end = part.end;
    }
    CHECK(end == reading.text.size());
}

TEST_CASE("any bytes are a line", "[lines]") {
    const std::string zero{"2\0g", 3};
    for (const std::string& text :
         {std::string{}, std::string{" "}, std::string{"(("}, std::string{"))"}, zero,
          std::string{"\xff\xfe 3\xc2\xbd \xe2\x81"}, std::string(3000, '('),
          std::string(3000, ','), std::string(5000, '1'), std::string(2000, '\xbd')})
        CHECK(writtenParts(readLine(text)) == text);
}

TEST_CASE("of an endless line the front is read and the further bytes are rest", "[lines]") {
    const std::string text = "2 cups flour, " + std::string(kMostLineBytes, 'x');
    const LineReading reading = readLine(text);
    CHECK(reading.food == "flour");
    REQUIRE(reading.rest.size() == 1);
    CHECK(reading.rest.front().size() == text.size() - kMostLineBytes);
}
