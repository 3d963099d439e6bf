#include "app/compare/card_words.h"

#include <catch2/catch.hpp>

#include "app/compare/compare_choice.h"
#include "compared_kitchens.h"

namespace nettare {

namespace {

using ::kitchen::comparedKitchens;
using ::kitchen::dish;
using Dish = ::kitchen::Kitchen;

CardWords energyCard(const Dish& before, const Dish& after) {
    return cardWords(comparedKitchens(before, after),
                     {stateInSentence(2), stateInSentence(std::nullopt)})
        .front();
}

Dish withResidue() {
    Dish kitchen = dish("3", "7").reading("left", "10", "", "residue");
    return kitchen.json("residues", R"([{"mixture":["oil","sugar"],"readings":["left"]}])");
}

TEST_CASE("a change that its uncertainty does not explain is real") {
    const CardWords card = energyCard(dish("3", "7"), dish("4", "7"));
    CHECK(card.change.toStdString() == "+24 kcal");
    CHECK(card.detail.toStdString() == "119 → 143 · ± 4, a real change");
    CHECK(card.spoken.toStdString() ==
          "Energy, per portion: 119 kcal before, 143 kcal after; +24 kcal, ± 4, a real change.");
}

TEST_CASE("a change that its uncertainty explains is within it") {
    const CardWords card = energyCard(dish("3", "7"), dish("3", "7.5"));
    CHECK(card.detail.toStdString() == "119 → 121 · ± 2, within uncertainty");
    CHECK(card.spoken.toStdString().ends_with("± 2, within uncertainty, which is no sure change."));
}

TEST_CASE("what cannot be compared says why, by the names of the states") {
    const CardWords later = energyCard(dish("3", "7"), withResidue());
    CHECK(later.change.toStdString() == "open");
    CHECK(later.detail.toStdString() ==
          "119 → 106 · not comparable: what stayed in the bowl was weighed only in the draft");
    CHECK(later.spoken.toStdString() ==
          "Energy, per portion: 119 kcal before, 106 kcal after; not comparable: what stayed in "
          "the bowl was weighed only in the draft.");
    const CardWords earlier = energyCard(withResidue(), dish("3", "7"));
    CHECK(earlier.detail.toStdString().ends_with("was weighed only in revision 2"));
}

TEST_CASE("what is as it was says so") {
    const CardWords card = energyCard(dish("3", "0.5"), dish("3", "0.5"));
    CHECK(card.change.toStdString() == "0 kcal");
    CHECK(card.detail.toStdString() == "98, as before");
}

}  // namespace

}  // namespace nettare
