#include "core/wording/line_questions.h"

#include <catch2/catch.hpp>

#include "core/wording/read_line.h"

using namespace nettare;

TEST_CASE("an ounce alone is asked with both its meanings", "[lines]") {
    const LineReading reading = readLine("1 (14.5 oz) can tomatoes");
    const auto questions = questionsOf(reading);
    REQUIRE(questions.size() == 1);
    CHECK(questions[0].field == LineField::Each);
    CHECK(questions[0].written == "14.5");
    REQUIRE(questions[0].choices.size() == 2);
    CHECK(questions[0].choices[0].meaning == LineMeaning::WeightOunce);
    CHECK(questions[0].choices[0].value == "oz");
    CHECK(questions[0].choices[1].meaning == LineMeaning::FluidOunce);
    CHECK(questions[0].choices[1].value == "fl oz");

    const LineReading weighed = answered(reading, questions[0], questions[0].choices[0]);
    CHECK(questionsOf(weighed).empty());
    CHECK(weighed.each[0].units == std::vector<std::string_view>{"oz"});
}

TEST_CASE("1,500 is asked: one and a half, or fifteen hundred", "[lines]") {
    const LineReading reading = readLine("1,500-2,000 g flour");
    CHECK_FALSE(reading.amount);
    const auto questions = questionsOf(reading);
    REQUIRE(questions.size() == 1);
    CHECK(questions[0].written == "1,500-2,000");
    CHECK(questions[0].choices[0].value == "1 1/2-2");
    CHECK(questions[0].choices[1].value == "1500-2000");

    const LineReading grouped = answered(reading, questions[0], questions[0].choices[1]);
    REQUIRE(grouped.amount);
    CHECK(grouped.amount->low() == Fraction{1500});
    CHECK(grouped.amount->high() == Fraction{2000});
    CHECK(questionsOf(grouped).empty());
}

TEST_CASE("a number with two different marks is not asked", "[lines]") {
    const LineReading reading = readLine("1.500,5 g flour");
    REQUIRE(reading.amount);
    CHECK(reading.amount->low() == *Fraction::make(3001, 2));
    CHECK(questionsOf(reading).empty());
}

TEST_CASE("a plain line asks nothing", "[lines]") {
    CHECK(questionsOf(readLine("2 cups (250 g) flour")).empty());
}
