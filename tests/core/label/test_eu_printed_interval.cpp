#include <catch2/catch.hpp>

#include "core/label/eu_rounding.h"
#include "core/label/label_interval.h"
#include "core/label/label_lines.h"
#include "core/label/label_values.h"

#include "label_cases.h"

namespace nettare {

namespace {

using enum Component;

struct EuIntervalCase {
    LabelLine line;
    const char* printed;
    const char* low;
    const char* high;
    bool lowIncluded = true;
    bool highIncluded = true;
};

void checkEuInterval(const EuIntervalCase& row) {
    CAPTURE(tagnameOf(row.line), row.printed);
    const auto interval = printedInterval(LabelRules::Eu, row.line, row.printed);
    REQUIRE(interval);
    CAPTURE(interval->low.text(), interval->high.text());
    CHECK(interval->low == Decimal::read(row.low));
    CHECK(interval->high == Decimal::read(row.high));
    CHECK(interval->lowIncluded == row.lowIncluded);
    CHECK(interval->highIncluded == row.highIncluded);
}

/// The line that a topic of the cases is about.
LabelLine lineOfCase(const LabelCase& row) {
    if (row.topic == "eu_round_macro") return FAT;
    if (row.topic == "eu_round_saturates") return FASAT;
    if (row.topic == "eu_round_salt") return LabelOnly::NACL;
    if (row.topic == "eu_round_energy")
        return row.input.contains("energy_kj") ? ENERC_KJ : ENERC_KCAL;
    return componentOfCase(row.input.at("nutrient"));
}

double amountOfCase(const LabelCase& row) {
    for (const char* key : {"value", "energy_kj", "energy_kcal"})
        if (row.input.contains(key)) return row.number(key);
    FAIL("no amount in " << row.id);
    return 0;
}

}  // namespace

TEST_CASE("a printed amount in the EU stands for all amounts that the guidance prints so",
          "[label]") {
    // Commission guidance on tolerances, December 2012, section 6, as restated by a laboratory.
    const EuIntervalCase rows[] = {
        {ENERC_KJ, "1870", "1869.5", "1870.5"},
        {ENERC_KCAL, "0", "0", "0.5"},
        // 0.5 g and less is 0 or "<0.5", to 0.1 g below 10 g, to 1 g from there.
        {FAT, "0", "0", "0.5"},
        {FAT, "<0.5", "0", "0.5"},
        {FAT, "0.5", "0.5", "0.55", false},
        {FAT, "0.6", "0.55", "0.65"},
        {FAT, "5", "4.95", "5.05"},
        {LabelOnly::CHOAVL, "9.9", "9.85", "9.95"},
        {LabelOnly::CHOAVL, "10", "9.95", "10.5"},
        {LabelOnly::STARCH, "11", "10.5", "11.5"},
        // 0.1 g and less is 0 or "<0.1".
        {FASAT, "0", "0", "0.1"},
        {FASAT, "<0.1", "0", "0.1"},
        {FASAT, "0.1", "0.1", "0.15", false},
        {FAPU, "0.2", "0.15", "0.25"},
        {FAMS, "10", "9.95", "10.5"},
        // 0.0125 g and less is 0 or "<0.01", to 0.01 g below 1 g, to 0.1 g from there.
        {LabelOnly::NACL, "0", "0", "0.0125"},
        {LabelOnly::NACL, "<0.01", "0", "0.0125"},
        {LabelOnly::NACL, "0.01", "0.0125", "0.015", false},
        {LabelOnly::NACL, "0.02", "0.015", "0.025"},
        {LabelOnly::NACL, "1.0", "0.995", "1.05"},
        {LabelOnly::NACL, "1.1", "1.05", "1.15"},
    };
    for (const EuIntervalCase& row : rows) checkEuInterval(row);
}

TEST_CASE("digits that the guidance does not ask for are known to half of the last one",
          "[label]") {
    const EuIntervalCase rows[] = {
        {FAT, "12.4", "12.35", "12.45"},
        {FAT, "0.3", "0.25", "0.35"},
        {LabelOnly::NACL, "1.25", "1.245", "1.255"},
        {FIBTG, "<1", "0", "1", true, false},
        {ALC, "4.5", "4.45", "4.55"},
    };
    for (const EuIntervalCase& row : rows) checkEuInterval(row);
}

TEST_CASE("a vitamin in the EU is known to its significant figures or its last digit, the coarser",
          "[label]") {
    const EuIntervalCase rows[] = {
        {CA, "123", "122.5", "123.5"},
        {CA, "1230", "1225", "1235"},
        {CA, "100", "99.5", "100.5"},
        {CA, "1000", "999.5", "1005"},
        {K, "87.7", "87.65", "87.75"},
        {FE, "2.3", "2.25", "2.35"},
        {FE, "2", "1.5", "2.5"},
        {FE, "2.35", "2.345", "2.355"},
        {VITC, "120", "115", "125"},
        {VITC, "100", "99.5", "105"},
        {VITB12, "0.12", "0.115", "0.125"},
        {VITD, "0", "0", "0.5"},
    };
    for (const EuIntervalCase& row : rows) checkEuInterval(row);
}

TEST_CASE("the EU's cases print as the guidance says, and stand for their amount", "[label]") {
    for (const LabelCase& row : euLabelCases()) {
        CAPTURE(row.id);
        CHECK_FALSE(row.source.empty());
        if (row.topic == "eu_salt") continue;
        const LabelLine line = lineOfCase(row);
        const Decimal amount = Decimal::fromDouble(amountOfCase(row));
        for (const std::string& printed : row.lawful) {
            const auto interval = printedInterval(LabelRules::Eu, line, printed);
            REQUIRE(interval);
            CHECK(interval->contains(amount));
        }
        const auto rule = euAmountRule(line);
        if (!rule) continue;
        std::string text = printedUnder(*rule, amount)->text();
        CHECK(row.accepts(text));
    }
}

TEST_CASE("salt of a label in the EU is sodium times 2.5", "[label]") {
    int checked = 0;
    for (const LabelCase& row : euLabelCases()) {
        if (row.topic != "eu_salt") continue;
        CAPTURE(row.id);
        const bool given = row.input.contains("salt_g");
        LabelFacts label;
        label.rules = LabelRules::Eu;
        label.per = LabelPer::HundredGrams;
        label.amounts = {{LabelOnly::NACL, given ? row.input.at("salt_g") : row.lawful.front()}};
        const double milligrams = given                            ? 500
                                  : row.input.contains("sodium_g") ? 1000 * row.number("sodium_g")
                                                                   : row.number("sodium_mg");
        const auto values = labelValues(label);
        REQUIRE(values);
        REQUIRE(values->size() == 1);
        CHECK(values->front().component == NA);
        CHECK(values->front().value == Approx(milligrams).epsilon(1e-12));
        ++checked;
    }
    CHECK(checked == 4);
}

TEST_CASE("labels have the lines of their rules and no others", "[label]") {
    const auto refused = [](LabelRules rules, const LabelLine& line) {
        const auto interval = printedInterval(rules, line, "5");
        return !interval && interval.error().code == ErrorCode::ComponentUnknown;
    };
    CHECK(refused(LabelRules::Us, LabelOnly::NACL));
    CHECK(refused(LabelRules::Us, LabelOnly::CHOAVL));
    CHECK(refused(LabelRules::Us, ENERC_KJ));
    CHECK(refused(LabelRules::Eu, CHOCDF));
    CHECK(refused(LabelRules::Eu, CHOLE));
    CHECK(refused(LabelRules::Eu, WATER));
    // Sugar alcohol has the steps of the other carbohydrates; alcohol has none.
    CHECK(printedInterval(LabelRules::Us, LabelOnly::POLYL, "1")->high == Decimal{15, -1});
    CHECK(printedInterval(LabelRules::Us, ALC, "14")->low == Decimal{135, -1});
    const auto error = printedInterval(LabelRules::Us, LabelOnly::POLYL, "1.5").error();
    CHECK(error.code == ErrorCode::LabelAmountImpossible);
    CHECK(error.value("component") == "POLYL");
}

TEST_CASE("lines stand in the order of packages, the law's own always there", "[label]") {
    std::string always;
    for (const LabelRules rules : {LabelRules::Us, LabelRules::Eu}) {
        for (const PrintedLine& line : printedLines(rules))
            if (line.always) always += std::string{line.called} + ", ";
        always += "/ ";
    }
    // 21 CFR 101.9(c), (d); Regulation (EU) 1169/2011, article 30(1) and Annex XV.
    CHECK(always ==
          "Calories, Total Fat, Saturated Fat, Trans Fat, Cholesterol, Sodium, Total Carbohydrate, "
          "Dietary Fiber, Total Sugars, Includes Added Sugars, Protein, Vitamin D, Calcium, Iron, "
          "Potassium, / Energy, Energy, Fat, of which saturates, Carbohydrate, of which sugars, "
          "Protein, Salt, / ");
    CHECK(printedLine(LabelRules::Us, LabelOnly::POLYL)->called == "Sugar Alcohol");
    CHECK(printedLine(LabelRules::Us, LabelOnly::NACL) == nullptr);
}

TEST_CASE("a text of ten thousand characters or with marks of direction is no amount", "[label]") {
    const std::string hostile[] = {
        std::string(10'000, '1'),
        std::string(10'000, ' ') + "1",
        std::string(10'000, ','),
        "\u202E12",
        "12\u200F",
        "<b>12</b>",
        "1" + std::string(10'000, '<'),
        std::string("1\0002", 3),
        "١٢",
    };
    for (const LabelRules rules : {LabelRules::Us, LabelRules::Eu})
        for (const std::string& text : hostile) {
            const auto interval = printedInterval(rules, FAT, text);
            REQUIRE_FALSE(interval);
            CHECK(interval.error().code == ErrorCode::LabelAmountUnreadable);
            CHECK(interval.error().value("found").size() < 300);
        }
}

}  // namespace nettare
