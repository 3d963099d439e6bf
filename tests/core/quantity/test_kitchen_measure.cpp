#include "core/quantity/kitchen_measure.h"

#include <catch2/catch.hpp>
#include <random>

using namespace nettare;

namespace {

std::string linesFor(const char* text) {
    const auto read = readKitchenMeasure(text);
    REQUIRE(read);
    std::string all;
    for (const std::string& line : kitchenMeasureLines(*read))
        all += (all.empty() ? "" : "|") + line;
    return all;
}

std::size_t kindOf(const char* text) {
    const auto read = readKitchenMeasure(text);
    REQUIRE(read);
    return read->index();
}

}  // namespace

TEST_CASE("temperature, gas mark, length and time are told apart by their units", "[quantity]") {
    CHECK(kindOf("180 °C") == 0);
    CHECK(kindOf(" 350F ") == 0);
    CHECK(kindOf("gas mark 4") == 1);
    CHECK(kindOf("about 7 cm across") == 2);
    CHECK(kindOf("2\"") == 2);
    CHECK(kindOf("25-30 minutes") == 3);
    CHECK(kindOf("30 s") == 3);
    for (const char* text : {"", "2 cups", "salt", "7", "100 g", "180 °C for 6 min"})
        CHECK_FALSE(readKitchenMeasure(text));
    CHECK_FALSE(readKitchenMeasure(std::string(100, ' ') + "7 cm" + std::string(100, 'x')));
}

TEST_CASE("a reading is told with its conversion", "[quantity]") {
    CHECK(linesFor("350F") ==
          "350 °F = 176.67 °C|as an oven's setting, with a fan 305 to 314 °F (common practice; "
          "follow the oven's maker)");
    CHECK(linesFor("160 °C fan") ==
          "160 °C = 320 °F|as an oven's setting, without the fan 180 to 185 °C (common practice; "
          "follow the oven's maker)");
    CHECK(
        linesFor("about 180 °C") ==
        "180 °C = 356 °F|“about” stands for 170 to 190 °C|as an oven's setting, with a fan 145 to "
        "170 °C (common practice; follow the oven's maker)");
    CHECK(linesFor("gas mark 4") ==
          "gas mark 4 = 350 °F = 176.67 °C; dials say 180 °C (common practice)");
    CHECK(linesFor("gas 1/2") ==
          "gas mark 1/2 = 250 °F = 121.11 °C; dials say 120 to 130 °C (common practice)");
    CHECK(linesFor("2-inch") == "50.8 mm");
    CHECK(linesFor("about 7 cm across") == "70 mm|“about” stands for 63 to 77 mm");
    CHECK(linesFor("1 1/2 hours") == "90 min");
    CHECK(linesFor("25-30 minutes") == "25 to 30 min");
    CHECK(linesFor("45 s") == "45 s");
    CHECK(linesFor("-18 °C") ==
          "−18 °C = −0.4 °F|as a limit that food must reach: at least 0 °F; that it must stay "
          "below: at most −1 °F");
}

TEST_CASE("a safety temperature is never told lower than it is", "[quantity]") {
    // 165 °F for poultry (US government chart, foodsafety.gov).
    CHECK(linesFor("165 °F") ==
          "165 °F = 73.89 °C|as a limit that food must reach: at least 74 °C; that it must stay "
          "below: at most 73 °C");
}

TEST_CASE("both scales are told where none was said", "[quantity]") {
    CHECK(linesFor("75 degrees") ==
          "the scale is not said, it could be either of these:|75 °C = 167 °F|75 °F = 23.89 °C|as "
          "a limit that food must reach: at least 24 °C; that it must stay below: at most 23 °C");
}

TEST_CASE("no text makes a reader fail", "[quantity]") {
    constexpr std::string_view kPieces[] = {
        "1",  "2", "1/2", "½",   "-",    "–",    " ",   "to",   "cm",  "°", "C",
        "F",  "h", "min", "gas", "mark", "an",   "½",   "0",    ".",   ",", "about",
        "\"", "/", "in",  "fan", "99",   "\xE2", "and", "half", "\xC2"};
    std::mt19937 random{411};
    std::size_t readable = 0;
    for (int i = 0; i < 200000; ++i) {
        std::string text;
        for (std::size_t parts = random() % 6 + 1; parts > 0; --parts)
            text += kPieces[random() % std::size(kPieces)];
        const auto read = readKitchenMeasure(text);
        if (!read) continue;
        ++readable;
        CAPTURE(text);
        CHECK_FALSE(kitchenMeasureLines(*read).empty());
    }
    CHECK(readable > 1000);
}
