#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/budget_share.h"
#include "kitchen.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

std::vector<BudgetShare> sharesOf(const Served& served, Component component,
                                  Basis basis = Basis::Batch) {
    const auto figures = Served::orThrow(figuresPer(basis, served.dossier, served.cooked));
    return budgetShares(component, figures, served.dossier, served.cooked);
}

const BudgetShare* named(const std::vector<BudgetShare>& shares, const std::string& name) {
    const auto found = std::ranges::find(shares, name, &BudgetShare::name);
    return found == shares.end() ? nullptr : &*found;
}

std::string namesOf(const std::vector<BudgetShare>& shares) {
    std::string names;
    for (const BudgetShare& share : shares) names += share.name + "\n";
    return names;
}

/// One of each thing that a cook knows as one.
Kitchen mixedKitchen() {
    Kitchen kitchen;
    TableFood prawn = kitchen::row("1", "prawn");
    kitchen::set(prawn, ENERC_KCAL, 85);
    kitchen::set(prawn, PROCNT, 20);
    kitchen::set(prawn, FAT, 0.5);
    kitchen::set(prawn, CHOCDF, 0);
    prawn.profile.spread[indexOf(PROCNT)] = {0.4, 8, {}};
    prawn.profile.spread[indexOf(FAT)] = {0.05, 8, {}};
    kitchen.row("prawns", prawn);
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"70"}]}})");
    kitchen.reading("p1", "24").reading("p2", "27").reading("p3", "25");
    kitchen.append("series", R"({"id":"p","name":"prawns, peeled","kind":"per piece","of":"prawn",
        "readings":["p1","p2","p3"]})");
    kitchen.line(R"({"id":"a","amount":"12","piece":"prawn","food":"prawns",
        "series":{"id":"p","use":"others"}})");
    kitchen.line(R"({"id":"b","amount":"60","unit":"g","food":"paste"})");
    kitchen.line(R"({"id":"c","amount":"2","piece":"bulb","food":"fennel"})");
    kitchen.reading("oil", "40")
        .line(R"({"id":"d","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.reading("left", "5", "", "residue");
    return kitchen.json("residues", R"([{"line":"d","readings":["left"]}])");
}

double sumOf(const std::vector<BudgetShare>& shares) {
    double sum = 0;
    for (const BudgetShare& share : shares) sum += share.share;
    return sum;
}

bool sumToOne(const std::vector<BudgetShare>& shares) {
    return std::fabs(sumOf(shares) - 1) < 1e-12;
}

}  // namespace

TEST_CASE("what a cook knows as one thing is one share of a budget", "[nutrition]") {
    const Served served{mixedKitchen()};
    const auto shares = sharesOf(served, ENERC_KCAL);
    INFO(namesOf(shares));
    CHECK(shares.size() == 8);
    const auto* series = named(shares, "prawns, your series");
    REQUIRE(series != nullptr);
    CHECK(series->kind == ShareKind::Series);
    // Mean and scatter. The common part of three readings is the zero of the scale.
    CHECK(series->parts.size() == 2);
    const auto* label = named(shares, "paste, label energy and serving");
    REQUIRE(label != nullptr);
    CHECK(label->kind == ShareKind::Label);
    CHECK(label->parts.size() == 2);
    const auto* table = named(shares, "prawns, table energy");
    REQUIRE(table != nullptr);
    CHECK(table->kind == ShareKind::Table);
    CHECK(table->parts.size() == 2);
    for (const char* name : {"fennel, table measure", "weighing of oil", "oil left in the bowl",
                             "tare of several weighings", "paste, weight as written"}) {
        CAPTURE(name);
        CHECK(named(shares, name) != nullptr);
    }
}

TEST_CASE("shares of a budget come largest first and sum to one", "[nutrition]") {
    const auto shares = sharesOf(Served{mixedKitchen()}, ENERC_KCAL, Basis::Portion);
    CHECK(sumOf(shares) == Approx(1).epsilon(1e-12));
    CHECK(std::ranges::is_sorted(shares, std::greater{}, &BudgetShare::share));
}

TEST_CASE("a figure without uncertainty has no shares", "[nutrition]") {
    const Kitchen kitchen = Kitchen{}.line(R"({"id":"a","amount":"2","unit":"tbsp","food":"oil"})");
    CHECK(sharesOf(Served{kitchen}, SUGAR).empty());
}

TEST_CASE("two lines of one name are told apart by their places", "[nutrition]") {
    Kitchen kitchen;
    for (const char* id : {"a", "b"})
        kitchen.line(R"({"id":")" + std::string{id} +
                     R"(","amount":"1-2","piece":"bulb","food":"fennel"})");
    const auto shares = sharesOf(Served{kitchen}, ENERC_KCAL);
    INFO(namesOf(shares));
    CHECK(named(shares, "fennel, range of the amount (line 1)") != nullptr);
    CHECK(named(shares, "fennel, range of the amount (line 2)") != nullptr);
}

TEST_CASE("a label's serving alone is said to be the serving", "[nutrition]") {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"NA","printed":"0"},{"component":"ENERC_KCAL","printed":"70"}]}})");
    kitchen.line(R"({"id":"a","amount":"1","unit":"tbsp","food":"paste"})");
    kitchen.line(R"({"id":"b","amount":"5","unit":"g","food":"paste"})");
    const auto energy = sharesOf(Served{kitchen}, ENERC_KCAL);
    CHECK(named(energy, "paste, label energy and serving") != nullptr);
    const auto water = sharesOf(Served{kitchen}, NA);
    INFO(namesOf(water));
    CHECK(named(water, "paste, label sodium") != nullptr);
}

TEST_CASE("small shares and those beyond the rows are everything else", "[nutrition]") {
    const auto shares = sharesOf(Served{mixedKitchen()}, ENERC_KCAL);
    const auto few = largestShares(shares, 3, 0);
    REQUIRE(few.size() == 4);
    CHECK(few[2].name == shares[2].name);
    CHECK(few.back().name == "everything else");
    CHECK(sumOf(few) == Approx(1).epsilon(1e-12));
    const auto large = largestShares(shares, 9, shares[1].share);
    REQUIRE(large.size() == 3);
    CHECK(large.back().share == Approx(1 - shares[0].share - shares[1].share));
    CHECK(largestShares(shares, 20, 0).size() == shares.size());
}

TEST_CASE("shares of the budgets of any recipe sum to one", "[nutrition]") {
    RandomRecipes recipes{20261126, RandomRecipes::Draw::AllWays};
    std::size_t sums = 0;
    std::size_t noticed = 0;
    for (int i = 0; i < 300; ++i) {
        const auto dossier = recipes.next().dossier();
        REQUIRE(dossier);
        const auto cooked = cook(*dossier);
        if (!cooked) continue;
        const auto figures = figuresPer(Basis::Portion, *dossier, *cooked);
        if (!figures) continue;
        for (const ComponentFacts& facts : allComponents()) {
            const auto shares = budgetShares(facts.component, *figures, *dossier, *cooked);
            CHECK(shares.empty() == ((*figures)[facts.component].u == 0));
            if (shares.empty()) continue;
            REQUIRE(sumToOne(shares));
            ++sums;
            // Without its largest one they do not.
            if (!sumToOne({shares.begin() + 1, shares.end()})) ++noticed;
        }
    }
    CHECK(sums > 2000);
    CHECK(noticed == sums);
}
