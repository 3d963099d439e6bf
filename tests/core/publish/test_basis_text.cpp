#include "core/publish/basis_text.h"

#include <catch2/catch.hpp>

#include "skewers.h"

using namespace nettare;
using skewers::counted;

namespace {

std::string saidOf(Basis basis, const Recipe& recipe, bool beforeCooking = false) {
    Figures figures;
    figures.basis = basis;
    figures.beforeCooking = beforeCooking;
    return basisText(figures, recipe);
}

}  // namespace

TEST_CASE("one piece and less are singular, more are plural", "[publish]") {
    const Recipe recipe = skewers::recipe();
    CHECK(pieceWordFor(counted(1, 2), recipe) == "skewer");
    CHECK(pieceWordFor(counted(1), recipe) == "skewer");
    CHECK(pieceWordFor(counted(3, 2), recipe) == "skewers");
    CHECK(pieceWordFor(counted(2), recipe) == "skewers");
}

TEST_CASE("a portion is said in pieces, in fractions of one, or in grams", "[publish]") {
    Recipe recipe = skewers::recipe();
    CHECK(portionText(recipe) == "2 skewers");
    recipe.portionPieces = counted(1, 2);
    CHECK(portionText(recipe) == "1/2 skewer");
    recipe.portionPieces = counted(5, 2);
    CHECK(portionText(recipe) == "2 1/2 skewers");
    recipe.portionPieces.reset();
    recipe.portionGrams = Decimal::read("137.5");
    CHECK(portionText(recipe) == "137.5 g");
}

TEST_CASE("each basis says what the figures are per", "[publish]") {
    const Recipe recipe = skewers::recipe();
    CHECK(saidOf(Basis::Piece, recipe) == "per skewer");
    CHECK(saidOf(Basis::Portion, recipe) == "per portion of 2 skewers");
    CHECK(saidOf(Basis::Hundred, recipe) == "per 100 g");
    CHECK(saidOf(Basis::Batch, recipe) == "per batch of 10 skewers");
}

TEST_CASE("without a cooked weight, 100 g are 100 g before cooking", "[publish]") {
    CHECK(saidOf(Basis::Hundred, skewers::recipe(), true) == "per 100 g before cooking");
}
