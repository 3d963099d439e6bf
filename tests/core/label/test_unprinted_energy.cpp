#include <catch2/catch.hpp>

#include "core/label/lawful_energy.h"
#include "core/publish/label_sentence.h"

#include "label_examples.h"

namespace nettare {

namespace {

using enum Component;

/// Per 100 ml of an EU package that prints neither alcohol nor acids.
LabelFacts euDrink(const char* kilojoules, const char* kilocalories, const char* carbohydrate,
                   const char* gramsPerMl) {
    LabelFacts label;
    label.rules = LabelRules::Eu;
    label.per = LabelPer::HundredMillilitres;
    label.density = LabelDensity{*Decimal::read(gramsPerMl), Decimal{1, -2}};
    label.amounts = {{ENERC_KJ, kilojoules},
                     {ENERC_KCAL, kilocalories},
                     {FAT, "0"},
                     {LabelOnly::CHOAVL, carbohydrate},
                     {PROCNT, "0"},
                     {LabelOnly::NACL, "0"}};
    return label;
}

void checkNothing(const char* name, const LabelFacts& label) {
    const auto findings = checkLabel(label);
    INFO(name << ": " << (findings.empty() ? "" : findingSentence(label, findings.front())));
    CHECK(findings.empty());
}

}  // namespace

// The figures are Annex XIV's of what such drinks have, from memory.
TEST_CASE("drinks need no line for the alcohol and the acids that give their energy", "[label]") {
    checkNothing("wine", euDrink("345", "83", "2.6", "0.99"));
    checkNothing("wine in grams", [] {
        LabelFacts label = euDrink("345", "83", "2.6", "0.99");
        label.per = LabelPer::HundredGrams;
        return label;
    }());
    checkNothing("beer", withLine(euDrink("180", "43", "3.1", "1.01"), PROCNT, "0.4"));
    checkNothing("spirits", euDrink("916", "221", "0", "0.95"));
    checkNothing("vinegar", euDrink("75", "17", "0.3", "1.01"));
    checkNothing("lemon juice", withLine(euDrink("115", "27", "1.6", "1.02"), FIBTG, "0.1"));
    LabelFacts ale = withServing(usBiscuit(), "355", "12", "fl oz");
    ale.servingInMillilitres = true;
    ale.density = LabelDensity{Decimal{101, -2}, Decimal{1, -2}};
    ale.amounts = {{ENERC_KCAL, "150"}, {FAT, "0"}, {CHOCDF, "13"}, {FIBTG, "0"}, {PROCNT, "2"}};
    checkNothing("ale of the US", ale);
}

TEST_CASE("no drink has more energy than its weight of alcohol, nor other foods than their lines",
          "[label]") {
    // 80 g of alcohol and 8 g of acids make 584 kcal.
    CHECK_FALSE(checkLabel(euDrink("2900", "700", "0", "0.95")).empty());
    // A digit that slipped in the kilojoules shows as before.
    CHECK_FALSE(checkLabel(euDrink("435", "83", "2.6", "0.99")).empty());
    CHECK_FALSE(mayHideAlcohol(labelNumbers(euBiscuit())));
    CHECK_FALSE(mayHideAlcohol(labelNumbers(usBiscuit())));
    CHECK_FALSE(checkLabel(withLine(euBiscuit(), LabelOnly::CHOAVL, "56")).empty());
}

TEST_CASE("kilojoules are the most where acids make the kilocalories", "[label]") {
    const auto energy = euLawfulEnergy(labelNumbers(euDrink("75", "17", "0", "1.00")));
    REQUIRE(energy.kilojoulesThen);
    // 16.5 kcal of alcohol, or 17.5 of acids but for what fat, protein and carbohydrate may hold.
    CHECK(energy.kilojoulesThen->low < 16.5 * 29 / 7 + 1);
    CHECK(energy.kilojoulesThen->high == Approx(17.5 * 13 / 3).margin(1e-9));
}

}  // namespace nettare
