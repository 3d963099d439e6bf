#include <catch2/catch.hpp>

#include "core/publish/label_sentence.h"

#include "label_examples.h"

namespace nettare {

namespace {

using enum Component;
using LabelSentences = std::vector<std::string>;

LabelSentences sentencesOf(const LabelFacts& label, const std::optional<LikeDensity>& like = {}) {
    LabelSentences sentences;
    for (const LabelFinding& finding : checkLabel(label, like))
        sentences.push_back(findingSentence(label, finding));
    return sentences;
}

std::string only(const LabelFacts& label, const std::optional<LikeDensity>& like = {}) {
    const LabelSentences sentences = sentencesOf(label, like);
    REQUIRE(sentences.size() == 1);
    return sentences.front();
}

}  // namespace

TEST_CASE("a finding says what the amounts make and what it was, in the words of the label",
          "[publish][label]") {
    CHECK(sentencesOf(withLine(usBiscuit(), CHOCDF, "70")) ==
          LabelSentences{
              "Total Fat 6 g, Total Carbohydrate 70 g, Dietary Fiber 1 g and Protein 2 g make 277 "
              "to 369 kcal; the label says 135 to 145. Was it Total Carbohydrate 20 g? Or has it "
              "sugar alcohols that it does not print, much acid, or a sweetener with a factor of "
              "its own?",
              "Total Fat 6 g, Sodium 95 mg, Total Carbohydrate 70 g and Protein 2 g weigh at least "
              "76.59 g, and the serving is 29.5 to 30.5 g. No food is so: correct it, or leave "
              "that line "
              "out. Was it Total Carbohydrate 20 g?"});
    CHECK(sentencesOf(withLine(euBiscuit(), LabelOnly::CHOAVL, "6.6")) ==
          LabelSentences{
              "Fat 16 g, Carbohydrate 6.6 g, Fibre 3.5 g and Protein 7.5 g make 202 to 212 "
              "kcal; the label says 444.5 to 445.5. Was it Carbohydrate 66 g? Or has it "
              "organic acids or alcohol that it does not print?",
              "sugars 22 g is more than Carbohydrate 6.6 g. Was it Carbohydrate 66 g?"});
    CHECK(
        sentencesOf(withLine(withLine(usBiscuit(), ENERC_KCAL, "340"), PROCNT, "less than 1 g")) ==
        LabelSentences{"Total Fat 6 g, Total Carbohydrate 20 g, Dietary Fiber 1 g and Protein less "
                       "than 1 g make 103 to 152 kcal; the label says 335 to 345. Was it Calories "
                       "140?"});
}

TEST_CASE("lines of no amount are left out of what makes the energy", "[publish][label]") {
    LabelFacts label;
    label.servingSize = Decimal{90, 0};
    label.amounts = {{ENERC_KCAL, "100"}, {FAT, "0"}, {CHOCDF, "60"}, {FIBTG, "0"}, {PROCNT, "18"}};
    CHECK(
        only(label) ==
        "Total Carbohydrate 60 g and Protein 18 g make 243 to 342 kcal; the label says 95 to 105. "
        "Was it Total Carbohydrate 6 g? Or has it sugar alcohols that it does not print, much "
        "acid, or a sweetener with a factor of its own?");
}

TEST_CASE("what a label need not print is asked for where it could be the reason",
          "[publish][label]") {
    const auto endsWith = [](const LabelFacts& label, const std::string& end) {
        const LabelSentences sentences = sentencesOf(label);
        REQUIRE_FALSE(sentences.empty());
        INFO(sentences.front());
        CHECK(sentences.front().ends_with(end));
    };
    const LabelFacts strong = withLine(euBiscuit(), LabelOnly::CHOAVL, "60");
    endsWith(strong, "? Or has it organic acids or alcohol that it does not print?");
    endsWith(withLine(strong, ALC, "0.5"), "?");
    endsWith(withLine(euBiscuit(), LabelOnly::CHOAVL, "69"),
             "? Or has it polyols that it does not print?");
    endsWith(withLine(withLine(euBiscuit(), LabelOnly::CHOAVL, "69"), LabelOnly::POLYL, "1"), "?");
    // 240 kcal of alcohol would weigh 34 g of a serving of 30 g.
    endsWith(withLine(usBiscuit(), ENERC_KCAL, "380"), "the label says 375 to 385.");
}

TEST_CASE("kilojoules are said beside the kilocalories they go with", "[publish][label]") {
    CHECK(sentencesOf(withLine(euBiscuit(), ENERC_KJ, "1970")) ==
          LabelSentences{
              "Fat 16 g, Carbohydrate 66 g, Fibre 3.5 g and Protein 7.5 g make 1841 to 1898 "
              "kJ; the label says 1969.5 to 1970.5. Was it Energy 1870 kJ?",
              "Energy 445 kcal is 1778 to 1930.5 kJ; the label says 1969.5 to 1970.5. Was it "
              "Energy 1870 kJ?"});
}

TEST_CASE("parts that are more than the whole are said with it", "[publish][label]") {
    CHECK(only(withLine(usBiscuit(), FASAT, "25")) ==
          "Saturated Fat 25 g is more than Total Fat 6 g. Was it Saturated Fat 2.5 g?");
    CHECK(only(withLine(usBiscuit(), FIBTG, "15")) ==
          "Dietary Fiber 15 g and Total Sugars 7 g are 21 to 23 g together, more than Total "
          "Carbohydrate 20 g. Was it Total Carbohydrate 21 g?");
    CHECK(only(withLine(usBiscuit(), SUGAD, "9")) ==
          "Added Sugars 9 g is more than Total Sugars 7 g. Was it Total Sugars 8 g?");
    CHECK(only(withLine(euBiscuit(), NA, "230")) ==
          "Sodium 230 mg makes 0.563 to 0.588 g of salt; the label says 0.795 to 0.805. Was it "
          "Sodium 320 mg?");
}

TEST_CASE("the size of a serving is said with its measure", "[publish][label]") {
    CHECK(
        only(withServing(usBiscuit(), "3", "1", "biscuit")) ==
        "Total Fat 6 g, Sodium 95 mg, Total Carbohydrate 20 g and Protein 2 g weigh at least "
        "26.59 g, and the serving is 2.75 to 3.25 g. No food is so: correct it, or leave that line "
        "out. Was it 30 g?");
    CHECK(only(withServing(usBiscuit(), "300", "2", "tbsp")) ==
          "2 tbsp = 300 g makes 9.98 to 10.16 g per mL; foods have 0.02 to 2. Was it 30 g?");
    CHECK(only(withServing(usBiscuit(), "60", "2", "tbsp"),
               LikeDensity{0.9, 0.95, "3 measures of oil"}) ==
          "2 tbsp = 60 g makes 1.98 to 2.05 g per mL; 3 measures of oil have 0.9 to 0.95. Was it "
          "50 g?");
    CHECK(only(withServing(usBiscuit(), "82", "1", "oz")) ==
          "1 oz = 82 g: such a measure holds 28 to 28.35 g. Was it 28 g?");
}

TEST_CASE("an amount that no rounding prints is said with what it likely was", "[publish][label]") {
    CHECK(only(withLine(usBiscuit(), ENERC_KCAL, "142")) ==
          "No rounding of the rules prints Calories 142. Was it Calories 140?");
}

TEST_CASE("hostile words of a measure stay one short line in a sentence", "[publish][label]") {
    const LabelFacts label = withServing(usBiscuit(), "300", "2", "tbsp");
    LabelFacts hostile = label;
    hostile.householdUnit = "\u202E\n" + std::string(10'000, 'x');
    hostile.amounts.push_back({CHOLE, std::string(10'000, '7')});
    hostile.amounts.push_back({FAPU, "\u200F5"});
    const LabelSentences sentences = sentencesOf(hostile);
    CHECK(sentences.empty());
    for (const LabelFinding& finding : checkLabel(label)) {
        const std::string said = findingSentence(hostile, finding);
        CHECK(said.size() < 300);
        CHECK(said.find('\n') == std::string::npos);
        CHECK(said.find("\u202E") == std::string::npos);
    }
}

TEST_CASE("what a printed amount stands for is short", "[publish][label]") {
    const auto text = [](const char* low, const char* high, bool highIncluded = true) {
        return intervalText({*Decimal::read(low), *Decimal::read(high), true, highIncluded});
    };
    CHECK(text("95", "105") == "95–105");
    CHECK(text("47.5", "55.0") == "47.5–55");
    CHECK(text("0", "0.50", false) == "< 0.5");
    CHECK(text("0", "0.5") == "0–0.5");
    CHECK(text("2", "2") == "2");
}

}  // namespace nettare
