#include <catch2/catch.hpp>

#include "core/label/label_entry.h"
#include "core/label/label_values.h"

namespace nettare {

namespace {

/// A US label of a spread that we made up.
LabelTyped typedSpread() {
    LabelTyped typed;
    typed.name = "Hazel spread, Mill Lane";
    typed.household = "2 tbsp";
    typed.servingSize = "37 g";
    typed.servingsPerPack = "about 13";
    typed.amounts = {{Component::ENERC_KCAL, "200"}, {Component::FAT, "11"},
                     {Component::FASAT, ""},         {Component::CHOCDF, "23"},
                     {Component::SUGAD, "19"},       {Component::PROCNT, " 2 "}};
    typed.date = "2026-05-16";
    return typed;
}

OwnFood blankLabel() {
    OwnFood blank;
    blank.food.row.table = kOwnTable;
    return blank;
}

Error refusedLabel(const LabelTyped& typed) {
    const auto food = labelledFoodFrom(typed, blankLabel());
    REQUIRE_FALSE(food);
    return food.error();
}

}  // namespace

TEST_CASE("a typed label is a food with its label as printed and a profile per 100 g") {
    const auto own = labelledFoodFrom(typedSpread(), blankLabel());
    REQUIRE(own);
    CHECK(own->food.name == "Hazel spread, Mill Lane");
    CHECK(own->origin.source == "package label");
    CHECK(own->origin.date == "2026-05-16");
    const LabelFacts& label = own->food.label.value();
    CHECK(label.householdAmount->text() == "2");
    CHECK(label.householdUnit == "tbsp");
    CHECK(label.servingSize == Decimal{37, 0});
    CHECK(label.servingsPerPack == "about 13");
    CHECK(own->food.profile[Component::ENERC_KCAL].value() == Approx(200.0 * 100 / 37));
    CHECK(*label.printed(Component::PROCNT) == "2");
    // What was left empty is missing, never zero.
    CHECK(label.printed(Component::FASAT) == nullptr);
    CHECK_FALSE(own->food.profile[Component::FASAT]);
    CHECK(own->food.addedSugars.reason == "as printed on the package");
    CHECK(typedLabelOf(*own).addedSugarsReason.empty());
}

TEST_CASE("a density typed alone is off by half of its last digit, and by 0.05 at most") {
    LabelTyped typed = typedSpread();
    typed.servingSize = "30 mL";
    for (const auto& [density, within] :
         {std::pair{"1", "0.05"}, std::pair{"1.2", "0.05"}, std::pair{"1.23", "0.005"},
          std::pair{"1.230", "0.0005"}}) {
        INFO(density);
        typed.gramsPerMl = density;
        typed.densityWithin.clear();
        const auto own = labelledFoodFrom(typed, blankLabel());
        REQUIRE(own);
        CHECK(own->food.label->density->within.text() == within);
        // What is looked at while it is typed is what will be saved.
        CHECK(factsSoFar(typed).density == own->food.label->density);
        typed.densityWithin = "0.3";
        CHECK(labelledFoodFrom(typed, blankLabel())->food.label->density->within.text() == "0.3");
    }
}

TEST_CASE("a label is not of a day that there is not") {
    LabelTyped typed = typedSpread();
    typed.date = "2026-02-31";
    CHECK(refusedLabel(typed).code == ErrorCode::NotADate);
    CHECK(refusedLabel(typed).pointer == "/label/date");
}

TEST_CASE("the next pack begins with the label as it was typed") {
    LabelTyped typed = typedSpread();
    typed.state = LabelState::Drained;
    typed.servingSize = "30 mL";
    typed.gramsPerMl = "1.23";
    typed.declarationSpreadPercent = "2.5";
    typed.plant = true;
    typed.addedSugars = AddedSugarKind::Stated;
    typed.addedSugarsPer100g = "51";
    typed.addedSugarsReason = "by the maker's sheet";
    typed.note = "jar with the green lid";
    typed.photo = LabelPhoto{std::string(64, 'a'), "jar.jpg"};
    const auto own = labelledFoodFrom(typed, blankLabel());
    REQUIRE(own);
    const LabelTyped next = typedLabelOf(*own);
    CHECK(next.household == "2 tbsp");
    CHECK(next.servingSize == "30");
    CHECK(next.servingInMillilitres);
    CHECK(next.gramsPerMl == "1.23");
    CHECK(next.densityWithin == "0.005");
    CHECK(next.declarationSpreadPercent == "2.5");
    CHECK(next.amounts.size() == 5);
    const auto again = labelledFoodFrom(next, *own);
    REQUIRE(again);
    CHECK(typedLabelOf(*again) == next);
}

TEST_CASE("household measures are typed as packages print them") {
    const auto household = [](const char* text) {
        LabelTyped typed = typedSpread();
        typed.household = text;
        const LabelFacts facts = factsSoFar(typed);
        return facts.householdAmount ? facts.householdAmount->text() + "|" + facts.householdUnit
                                     : std::string{};
    };
    CHECK(household("1 tbsp") == "1|tbsp");
    CHECK(household("1tbsp") == "1|tbsp");
    CHECK(household("1 1/2 cups") == "1 1/2|cups");
    CHECK(household("½ cup") == "½|cup");
    CHECK(household("2-3 crackers (30 g)") == "2-3|crackers (30 g)");
    CHECK(household("bar").empty());
}

TEST_CASE("numbers beside the amounts are typed with a decimal comma too") {
    LabelTyped typed = typedSpread();
    typed.servingSize = "14,5 g";
    typed.gramsPerMl = "1,035";
    typed.densityWithin = "0,01";
    typed.declarationSpreadPercent = "12,5";
    typed.addedSugars = AddedSugarKind::Stated;
    typed.addedSugarsPer100g = "3,25";
    typed.addedSugarsReason = "the maker said so";
    typed.amounts = {{Component::ENERC_KCAL, "90"}};
    CHECK(factsSoFar(typed).servingSize == Decimal{145, -1});
    CHECK(factsSoFar(typed).density->gramsPerMl == Decimal{1035, -3});
    const auto own = labelledFoodFrom(typed, blankLabel());
    REQUIRE(own);
    CHECK(own->food.label->servingSize == Decimal{145, -1});
    CHECK(own->food.label->density->gramsPerMl == Decimal{1035, -3});
    CHECK(own->food.label->density->within == Decimal{1, -2});
    CHECK(own->food.label->declarationSpread == Decimal{125, -3});
    CHECK(own->food.addedSugars.statedPer100g == 3.25);
    typed.densityWithin.clear();
    CHECK(labelledFoodFrom(typed, blankLabel())->food.label->density->within == Decimal{5, -4});
}

TEST_CASE("a serving that may be in thousands is asked about") {
    LabelTyped typed = typedSpread();
    for (const char* size : {"1,500", "1,500 g", "1,500 ml"}) {
        typed.servingSize = size;
        CHECK_FALSE(factsSoFar(typed).servingSize);
        CHECK(refusedLabel(typed).code == ErrorCode::NotADecimal);
    }
}

TEST_CASE("a label that is being typed is read as far as it goes") {
    LabelTyped typed;
    CHECK(factsSoFar(typed).amounts.empty());
    typed.servingSize = "1x";
    typed.household = "1";
    typed.amounts = {{Component::FAT, std::string(10'000, '9')}, {Component::NA, "140"}};
    const LabelFacts facts = factsSoFar(typed);
    CHECK_FALSE(facts.servingSize);
    CHECK_FALSE(facts.householdAmount);
    CHECK(facts.amounts.size() == 1);
}

TEST_CASE("what is wrong in a typed label is told at its field") {
    LabelTyped typed = typedSpread();
    typed.name = " ";
    CHECK(refusedLabel(typed).pointer == "/name");
    CHECK(refusedLabel(typed).code == ErrorCode::EmptyText);
    typed = typedSpread();
    typed.amounts[1].printed = "elf";
    CHECK(refusedLabel(typed).pointer == "/label/declares/FAT");
    CHECK(refusedLabel(typed).code == ErrorCode::LabelAmountUnreadable);
    CHECK(refusedLabel(typed).value("food") == "Hazel spread, Mill Lane");
    typed.amounts[1].printed = std::string(10'000, '9');
    CHECK(refusedLabel(typed).pointer == "/label/declares/FAT");
    CHECK(refusedLabel(typed).code == ErrorCode::TextTooLong);
    typed = typedSpread();
    typed.amounts[0].printed = "52";
    CHECK(refusedLabel(typed).pointer == "/label/declares/ENERC_KCAL");
    CHECK(refusedLabel(typed).code == ErrorCode::LabelAmountImpossible);
    typed = typedSpread();
    typed.servingSize.clear();
    CHECK(refusedLabel(typed).pointer == "/label/serving_grams");
    CHECK(refusedLabel(typed).code == ErrorCode::LabelNeedsServing);
    typed = typedSpread();
    typed.servingSize = "30 ml";
    CHECK(refusedLabel(typed).code == ErrorCode::LabelNeedsDensity);
    typed = typedSpread();
    typed.household = "tbsp";
    CHECK(refusedLabel(typed).pointer == "/label/serving/unit");
    typed = typedSpread();
    typed.declarationSpreadPercent = "120";
    CHECK(refusedLabel(typed).pointer == "/label/declaration_spread");
    typed = typedSpread();
    typed.date = "May";
    CHECK(refusedLabel(typed).code == ErrorCode::NotADate);
    typed = typedSpread();
    typed.amounts.clear();
    CHECK(refusedLabel(typed).pointer == "/label/declares");
    typed = typedSpread();
    typed.addedSugars = AddedSugarKind::AllOfItsSugars;
    typed.amounts.clear();
    typed.amounts.push_back({Component::SUGAR, "19"});
    CHECK(refusedLabel(typed).pointer == "/added_sugars/reason");
}

TEST_CASE("an amount that no rounding prints passes once the cook said it is as printed") {
    LabelTyped typed = typedSpread();
    typed.amounts[0].printed = "52";
    typed.assents = {{LabelFindingKind::NotLawful, "ENERC_KCAL 52"},
                     {LabelFindingKind::NotLawful, "ENERC_KCAL 57"}};
    const auto own = labelledFoodFrom(typed, blankLabel());
    REQUIRE(own);
    // The other one is about an amount that is not there any more.
    REQUIRE_FALSE(own->food.label->assents.empty());
    for (const LabelAssent& assent : own->food.label->assents)
        CHECK(assent.about.find("57") == std::string::npos);
}

TEST_CASE("text in a label that writes over other text is refused") {
    LabelTyped typed = typedSpread();
    typed.name = "Hazel \xE2\x80\xAE spread";
    CHECK(refusedLabel(typed).code == ErrorCode::TextNotClean);
    typed = typedSpread();
    typed.household = "2 \xE2\x80\xAE tbsp";
    CHECK(refusedLabel(typed).code == ErrorCode::TextNotClean);
    typed = typedSpread();
    typed.note = std::string(10'000, 'x');
    CHECK(refusedLabel(typed).code == ErrorCode::TextTooLong);
    typed = typedSpread();
    typed.name = "<b>Hazel</b> & <img src=x>";
    CHECK(labelledFoodFrom(typed, blankLabel()));
}

}  // namespace nettare
