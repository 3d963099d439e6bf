#include "core/nutrition/composition.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;

namespace {

Food tableFood(TableFood row) {
    Food food;
    food.name = row.name;
    food.plant = row.plant;
    food.addedSugars = row.addedSugars;
    food.table = std::move(row);
    return food;
}

Composition composed(const Food& food) {
    return kitchen::Served::orThrow(compositionOf(food, 0, {}));
}

double uncertainty(const Composition& composition, Component component) {
    double squares = 0;
    for (const CompositionSource& source : composition.sources)
        for (const auto& effect : source.effects)
            if (effect.component == component)
                squares += std::pow(effect.perGram * source.source.u, 2);
    return std::sqrt(squares);
}

Spread published(double standardError, int n) {
    return {standardError, n, {}};
}

}  // namespace

TEST_CASE("one lot scatters about the table's mean", "[nutrition]") {
    // Variance SE^2 + (SE sqrt(n))^2: the mean's own and one lot's.
    TableFood row = kitchen::fennel();
    row.profile.spread[indexOf(NA)] = published(4, 9);
    const Composition fennel = composed(tableFood(row));
    CHECK(fennel[NA].perGram == Approx(0.52));
    CHECK(uncertainty(fennel, NA) == Approx(std::sqrt(16.0 + 144.0) / 100));
    CHECK(fennel.sources.front().source.freedom == 8);
}

TEST_CASE("carbohydrate by difference and energy follow their parts by closure", "[nutrition]") {
    // dC/dP = -1, dE/dP = f_P - f_C, dE/dF = f_F - f_C, dE/dWATER = -f_C with the row's own
    // factors.
    TableFood row = kitchen::fennel();
    for (const Component c : {WATER, PROCNT, FAT}) row.profile.spread[indexOf(c)] = published(1, 4);
    const Composition fennel = composed(tableFood(row));
    const double lot = std::sqrt(5.0) / 100;
    CHECK(uncertainty(fennel, CHOCDF) == Approx(lot * std::sqrt(3.0)));
    const double energy =
        std::sqrt(std::pow(2.44 - 3.57, 2) + std::pow(8.37 - 3.57, 2) + 3.57 * 3.57);
    CHECK(uncertainty(fennel, ENERC_KCAL) == Approx(lot * energy));
    CHECK(uncertainty(fennel, ENERC_KJ) == Approx(4.184 * lot * energy));
}

TEST_CASE("where there is no carbohydrate by kind, only protein and fat move the energy",
          "[nutrition]") {
    TableFood row = kitchen::oliveOil();
    row.profile.spread[indexOf(WATER)] = published(1, 4);
    row.profile.spread[indexOf(FAT)] = published(1, 4);
    const Composition oil = composed(tableFood(row));
    CHECK(uncertainty(oil, CHOCDF) == 0);
    CHECK(uncertainty(oil, ENERC_KCAL) == Approx(8.84 * std::sqrt(5.0) / 100));
}

TEST_CASE("a missing part is bounded by what its parent leaves, and never zero for free",
          "[nutrition]") {
    const Composition oil = composed(tableFood(kitchen::oliveOil()));
    CHECK(oil[FATRN].origin == Origin::Missing);
    CHECK(*oil[FATRN].high == Approx((100 - 13.808 - 72.961 - 10.523) / 100));
    CHECK(oil[VITD].origin == Origin::Missing);
    CHECK_FALSE(oil[VITD].high);
    TableFood row = kitchen::fennel();
    row.profile.per100g[indexOf(SUGAR)] = {};
    CHECK(*composed(tableFood(row))[SUGAR].high == Approx(0.073 - 0.031));
}

TEST_CASE("a part of a missing parent is at most what the other proximates leave", "[nutrition]") {
    TableFood row = kitchen::fennel();
    for (const Component c : {CHOCDF, FIBTG, SUGAR}) row.profile.per100g[indexOf(c)] = {};
    row.addedSugars = {AddedSugarKind::BetweenNoneAndAll, 0, "sauce"};
    const Composition fennel = composed(tableFood(row));
    const double rest = (100 - 90.21 - 1.05 - 1.24 - 0.20) / 100;
    for (const Component c : {CHOCDF, FIBTG, SUGAR, SUGAD}) {
        CHECK(fennel[c].origin == Origin::Missing);
        CHECK(*fennel[c].high == Approx(rest));
    }
    TableFood bare = kitchen::oliveOil();
    for (const Component c : {CHOCDF, FIBTG}) bare.profile.per100g[indexOf(c)] = {};
    const Composition oil = composed(tableFood(bare));
    CHECK(oil[CHOCDF].origin == Origin::ByParent);
    CHECK(oil[FIBTG].origin == Origin::ByParent);
}

TEST_CASE("trans fat is zero by kind in an unhydrogenated plant food", "[nutrition]") {
    Food food = tableFood(kitchen::oliveOil());
    food.plant = true;
    const Composition oil = composed(food);
    CHECK(oil[FATRN].origin == Origin::ByKind);
    CHECK(oil[FATRN].perGram == 0);
}

TEST_CASE("no carbohydrate leaves no room for fibre and sugars", "[nutrition]") {
    TableFood row = kitchen::oliveOil();
    row.profile.per100g[indexOf(FIBTG)] = {};
    row.profile.per100g[indexOf(SUGAR)] = {};
    const Composition oil = composed(tableFood(row));
    CHECK(oil[FIBTG].origin == Origin::ByParent);
    CHECK(oil[SUGAR].origin == Origin::ByParent);
    CHECK(oil[SUGAD].perGram == 0);
}

TEST_CASE("added sugars follow the food's trait", "[nutrition]") {
    const Composition sugar = composed(tableFood(kitchen::sugar()));
    CHECK(sugar[SUGAD].origin == Origin::AllSugars);
    CHECK(sugar[SUGAD].perGram == sugar[SUGAR].perGram);
    CHECK(uncertainty(sugar, SUGAD) == uncertainty(sugar, SUGAR));
    CHECK(uncertainty(sugar, SUGAR) > 0);
    CHECK(composed(tableFood(kitchen::fennel()))[SUGAD].origin == Origin::ByKind);
    Food between = tableFood(kitchen::fennel());
    between.addedSugars = {AddedSugarKind::BetweenNoneAndAll, 0, "sauce"};
    CHECK(composed(between)[SUGAD].origin == Origin::Missing);
    CHECK(*composed(between)[SUGAD].high == Approx(0.0393));
    Food stated = tableFood(kitchen::fennel());
    stated.addedSugars = {AddedSugarKind::Stated, 2, "own recipe"};
    CHECK(composed(stated)[SUGAD].perGram == Approx(0.02));
    TableFood unknown = kitchen::sugar();
    unknown.profile.per100g[indexOf(SUGAR)] = {};
    CHECK(composed(tableFood(unknown))[SUGAD].origin == Origin::Missing);
}

TEST_CASE("energy missing in one unit is converted and says so", "[nutrition]") {
    TableFood row = kitchen::fennel();
    row.profile.per100g[indexOf(ENERC_KJ)] = {};
    const Composition fennel = composed(tableFood(row));
    CHECK(fennel[ENERC_KJ].origin == Origin::Converted);
    CHECK(fennel[ENERC_KJ].perGram == Approx(0.31 * 4.184));
    CHECK(nameOf(Origin::Converted) == "converted");
}

TEST_CASE("what the cook states wins and has a reason", "[nutrition]") {
    Food food = tableFood(kitchen::fennel());
    food.stated = {{NA, *Decimal::read("40"), Decimal::read("3"), "supplier's analysis"}};
    const Composition fennel = composed(food);
    CHECK(fennel[NA].origin == Origin::Stated);
    CHECK(fennel[NA].perGram == Approx(0.4));
    CHECK(uncertainty(fennel, NA) == Approx(3 / std::sqrt(3.0) / 100));
}

TEST_CASE("a label declares what it prints and bounds its added sugars by its sugars",
          "[nutrition]") {
    Food food;
    food.name = "sauce";
    food.label = LabelFacts{LabelRules::Us,
                            *Decimal::read("30"),
                            Amount{Fraction{2}, Fraction{2}, "2"},
                            "tbsp",
                            {{SUGAR, "6"}, {ENERC_KCAL, "50"}, {CHOCDF, "less than 1"}}};
    const Composition sauce = composed(food);
    CHECK(sauce[SUGAR].perGram == Approx(0.2));
    CHECK(*sauce[SUGAD].high == Approx(6.5 / 30));  // 6 g stand for 5.5 to 6.5 g
    CHECK(sauce[ENERC_KJ].perGram == Approx(50 * 4.184 / 30));
    // 50 kcal stands for 47.5 to 55 (21 CFR 101.9(c)(1)): u^2 = 7.5^2/12 + 1.25^2.
    CHECK(uncertainty(sauce, ENERC_KCAL) == Approx(std::sqrt(7.5 * 7.5 / 12 + 1.25 * 1.25) / 30));
    CHECK(sauce[CHOCDF].perGram == Approx(0.5 / 30));  // less than 1 g: the middle of 0 to 1
    food.label->amounts = {{ENERC_KCAL, "52"}};
    CHECK(compositionOf(food, 0, {}).error().code == ErrorCode::LabelAmountImpossible);
}

TEST_CASE("a label's energy is the same energy in kJ, whatever the table's row says",
          "[nutrition]") {
    Food food = tableFood(kitchen::oliveOil());
    food.label = LabelFacts{LabelRules::Us,
                            *Decimal::read("14"),
                            Amount{Fraction{1}, Fraction{1}, "1"},
                            "tbsp",
                            {{ENERC_KCAL, "120"}}};
    const Composition oil = composed(food);
    CHECK(oil[ENERC_KJ].origin == Origin::Converted);
    CHECK(oil[ENERC_KJ].perGram == Approx(120 * 4.184 / 14));
    CHECK(uncertainty(oil, ENERC_KJ) == Approx(4.184 * uncertainty(oil, ENERC_KCAL)));
    CHECK(oil[FASAT].origin == Origin::Table);
}

TEST_CASE("what a label leaves out is bounded by the most its parent may be", "[nutrition]") {
    // Fat 0.5 g stands for 0.5 to 0.75 g, 0 g for 0 to 0.5 g, 10 g for 9.5 to 10.5 g
    // (21 CFR 101.9(c)(2), ties either way).
    const auto label = [](std::vector<LabelAmount> amounts) {
        Food food;
        food.label = LabelFacts{LabelRules::Us, *Decimal::read("30"),
                                Amount{Fraction{2}, Fraction{2}, "2"}, "tbsp", std::move(amounts)};
        return composed(food);
    };
    CHECK(*label({{FAT, "0"}})[FASAT].high == Approx(0.5 / 30));
    const Composition parts = label({{FAT, "10"}, {FASAT, "2"}, {FAMS, "5"}, {FAPU, "3"}});
    CHECK(parts[FATRN].origin == Origin::Missing);
    CHECK(*parts[FATRN].high > 0.5 / 30);
    // No sugars printed: the added ones are as many as there may be, with their uncertainty.
    const Composition none = label({{SUGAR, "0"}});
    CHECK(none[SUGAD].perGram == 0);
    CHECK(uncertainty(none, SUGAD) == uncertainty(none, SUGAR));
    CHECK(uncertainty(none, SUGAD) > 0);
}

TEST_CASE("a printed amount is its figure, with or without its unit", "[nutrition]") {
    const auto kilocalories = [](const char* printed) {
        Food food;
        food.label = LabelFacts{LabelRules::Us,
                                *Decimal::read("100"),
                                Amount{Fraction{1}, Fraction{1}, "1"},
                                "jar",
                                {{ENERC_KCAL, printed}}};
        return composed(food)[ENERC_KCAL].perGram * 100;
    };
    CHECK(kilocalories("50") == Approx(50));
    CHECK(kilocalories("50 kcal") == Approx(50));
    CHECK(kilocalories(" 50kcal ") == Approx(50));
    CHECK(kilocalories("1,250") == Approx(1250));
}

TEST_CASE("a declaration spread widens a label beyond its rounding", "[nutrition]") {
    Food food;
    food.label = LabelFacts{LabelRules::Us,
                            *Decimal::read("100"),
                            Amount{Fraction{1}, Fraction{1}, "1"},
                            "bar",
                            {{ENERC_KCAL, "400"}}};
    Assumptions assumptions;
    assumptions.declarationSpread = *Decimal::read("0.2");
    const auto wide = compositionOf(food, 0, assumptions);
    REQUIRE(wide);
    CHECK(uncertainty(*wide, ENERC_KCAL) == Approx(std::sqrt(100.0 / 12 + 80 * 80 / 3.0) / 100));
}
