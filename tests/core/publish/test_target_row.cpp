#include "core/publish/target_row.h"

#include <catch2/catch.hpp>

#include "skewers.h"

using namespace nettare;
using enum nettare::Component;

namespace {

TargetVerdict ceiling(const Figure& figure, Decimal limit, double probability, TargetState state) {
    TargetVerdict verdict;
    verdict.target = {figure.component, Basis::Portion, limit, std::nullopt};
    verdict.figure = figure;
    verdict.interval = intervalOf(figure);
    verdict.probability = probability;
    verdict.state = state;
    return verdict;
}

}  // namespace

TEST_CASE("a ceiling says how likely it is met and how large a portion may be", "[publish]") {
    TargetVerdict verdict =
        ceiling(skewers::known(ENERC_KCAL, 144, 2.5), {150, 0}, 0.99178, TargetState::Met);
    verdict.largestPortion = 2.0143;
    CHECK(targetRow(verdict, skewers::recipe()) ==
          "ceiling of 150 kcal energy per portion: met; the upper end is 149; probability 99.1 %; "
          "the largest portion is 2 skewers");
    verdict.largestPortion = 1.999;
    CHECK(targetRow(verdict, skewers::recipe()).ends_with("; the largest portion is 1 skewer"));
    verdict.largestPortion = 0.8;
    CHECK(targetRow(verdict, skewers::recipe()).ends_with("; not one skewer meets it"));
}

TEST_CASE("of a portion in grams whole grams are the largest", "[publish]") {
    Recipe recipe = skewers::recipe();
    recipe.portionPieces.reset();
    recipe.portionGrams = Decimal{150, 0};
    TargetVerdict verdict =
        ceiling(skewers::known(FAT, 3.2, 0.1), {3, 0}, 0.02275, TargetState::NotMet);
    verdict.largestPortion = 131.99;
    CHECK(targetRow(verdict, recipe) ==
          "ceiling of 3 g fat per portion: not met; the upper end is 3.4; probability 2.2 %; the "
          "largest portion is 131 g");
}

TEST_CASE("a probability is never rounded up to certainty", "[publish]") {
    const TargetVerdict verdict =
        ceiling(skewers::open(VITC, 5, {}, 0.5), {90, 0}, 0.99999, TargetState::NotMet);
    CHECK(targetRow(verdict, skewers::recipe()) ==
          "ceiling of 90 mg vitamin C per portion: not met; it has no upper end; probability "
          "99.9 %");
    CHECK(targetRow(ceiling(skewers::known(FAT, 3, 0.01), {9, 0}, 1, TargetState::Met),
                    skewers::recipe())
              .ends_with("; probability 99.9 %"));
    CHECK(targetRow(ceiling(skewers::known(FAT, 3), {9, 0}, 1, TargetState::Met), skewers::recipe())
              .ends_with("; probability 100.0 %"));
}
