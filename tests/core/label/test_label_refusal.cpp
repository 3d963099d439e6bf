#include "core/label/label_refusal.h"

#include <catch2/catch.hpp>

#include "label_examples.h"

namespace nettare {

namespace {

using enum Component;

AddedSugars statedSugars(double per100g) {
    return {AddedSugarKind::Stated, per100g, "by the maker's sheet"};
}

/// 6 g of sugars in a serving of 170 g.
LabelFacts yogurtOfUs() {
    LabelFacts label;
    label.servingSize = Decimal{170, 0};
    label.amounts = {{ENERC_KCAL, "130"}, {SUGAR, "6"}, {PROCNT, "16"}};
    return label;
}

}  // namespace

TEST_CASE("a label whose lines can all be read is not refused", "[label]") {
    CHECK_FALSE(labelRefusal(usBiscuit()));
    CHECK_FALSE(labelRefusal(euBiscuit()));
    // What no rounding prints is a finding, which the cook may have seen.
    CHECK_FALSE(labelRefusal(withLine(usBiscuit(), ENERC_KCAL, "142")));
}

TEST_CASE("a letter for a digit makes an amount unreadable wherever it stands", "[label]") {
    LabelFacts label = withLine(yogurtOfUs(), PROCNT, "1O");
    // A finding in front of it does not hide it.
    label = withLine(label, ENERC_KCAL, "142");
    const auto refusal = labelRefusal(label);
    REQUIRE(refusal);
    CHECK(refusal->code == ErrorCode::LabelAmountUnreadable);
    CHECK(refusal->pointer == "/declares/2/printed");
    CHECK(refusal->value("found") == "1O");
}

TEST_CASE("a line that packages of the rules do not have is refused", "[label]") {
    LabelFacts label = yogurtOfUs();
    label.amounts.push_back({ENERC_KJ, "544"});
    const auto refusal = labelRefusal(label);
    REQUIRE(refusal);
    CHECK(refusal->code == ErrorCode::ComponentUnknown);
    CHECK(refusal->pointer == "/declares/3/component");
    CHECK(refusal->value("found") == "ENERC_KJ");
}

TEST_CASE("stated added sugars are at most the sugars of the label", "[label]") {
    const auto refusal = addedSugarsRefusal(yogurtOfUs(), statedSugars(50));
    REQUIRE(refusal);
    CHECK(refusal->code == ErrorCode::AddedSugarsAboveSugars);
    CHECK(refusal->pointer == "/added_sugars/per_100g");
    // 6.5 g in 169.5 g.
    CHECK(refusal->value("most") == "3.83");
    CHECK_FALSE(addedSugarsRefusal(yogurtOfUs(), statedSugars(3.8)));
    // The last digit is as uncertain as that of any stated amount: 4 may be 3.5.
    CHECK_FALSE(addedSugarsRefusal(yogurtOfUs(), statedSugars(4)));
    CHECK(addedSugarsRefusal(yogurtOfUs(), statedSugars(4.1)));
    const AddedSugars all{AddedSugarKind::AllOfItsSugars, 50, "a syrup"};
    CHECK_FALSE(addedSugarsRefusal(yogurtOfUs(), all));
}

TEST_CASE("a label that prints added sugars goes by them, one without sugars by carbohydrate",
          "[label]") {
    LabelFacts printed = yogurtOfUs();
    printed.amounts.push_back({SUGAD, "2"});
    CHECK_FALSE(addedSugarsRefusal(printed, statedSugars(50)));
    CHECK(addedSugarsRefusal(printed, statedSugars(101))->code == ErrorCode::OutOfRange);
    LabelFacts without = yogurtOfUs();
    without.amounts = {{CHOCDF, "17"}};
    CHECK_FALSE(addedSugarsRefusal(without, statedSugars(10)));
    CHECK(addedSugarsRefusal(without, statedSugars(11)));
    without.amounts.clear();
    CHECK_FALSE(addedSugarsRefusal(without, statedSugars(50)));
}

}  // namespace nettare
