#include "core/simulation/figure_model.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/student_t.h"
#include "core/simulation/sum_tile.h"
#include "kitchen.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

constexpr Basis kAllBases[] = {Basis::Batch, Basis::Piece, Basis::Portion, Basis::Hundred};
constexpr Meaning kMeanings[] = {Meaning::RecipeMean, Meaning::ThisBatch, Meaning::AnyPiece};

Simulation simulated(const Served& served, const Figures& figures, Component component,
                     std::uint64_t trials = 200'000) {
    SimulationPlan plan;
    plan.trials = trials;
    return *simulate(plan, figureModel(component, figures, served.dossier, served.cooked));
}

Figures figuresOf(const Served& served, Basis basis = Basis::Batch) {
    return *figuresPer(basis, served.dossier, served.cooked);
}

/// What the plan gives where one source alone deviates by so much.
double deviated(const FigurePlan& plan, std::size_t source, double deviation) {
    SumTile tile{plan, 1};
    tile.move(plan.sources[source], {&deviation, 1});
    double value = 0;
    tile.figures({&value, 1});
    return value;
}

/// Foods of fixed composition, so that grams alone are uncertain.
Kitchen withBeans() {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"beans","name":"beans","stated":[
        {"component":"PROCNT","per_100g":"20","within":"0","reason":"invented"}]})");
    return kitchen;
}

/// A food that a label declares: 70 kcal in 33 g.
Kitchen withLabelledPaste() {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"70"},{"component":"FAT","printed":"4.5"}]}})");
    return kitchen;
}

Kitchen withSeries(Kitchen kitchen, const std::vector<std::string>& grams, const char* amount) {
    std::string ids;
    for (std::size_t i = 0; i < grams.size(); ++i) {
        const std::string id = "b" + std::to_string(i);
        kitchen.reading(id, grams[i], "", "edible portion", "fine");
        ids += (ids.empty() ? "\"" : ",\"") + id + "\"";
    }
    kitchen.append("series", R"({"id":"pods","name":"pods","kind":"per piece","of":"pod",)"
                             R"("readings":[)" +
                                 ids + "]}");
    return kitchen.line(std::string{R"({"id":"l","amount":")"} + amount +
                        R"(","piece":"pod","food":"beans","series":{"id":"pods","use":"others"}})");
}

struct Cases {
    int recipes = 0, figures = 0;
};

void checkWithoutDeviation(const Dossier& dossier, Meaning meaning, Cases& cases) {
    const auto cooked = cook(dossier, meaning);
    if (!cooked) return;
    ++cases.recipes;
    for (const Basis basis : kAllBases) {
        const auto figures = figuresPer(basis, dossier, *cooked);
        if (!figures) continue;
        for (const ComponentFacts& facts : allComponents()) {
            const FigurePlan plan = planOf(facts.component, *figures, dossier, *cooked);
            const double linear = (*figures)[facts.component].value;
            const double drawn = valueWithoutDeviation(plan);
            ++cases.figures;
            if (std::fabs(drawn - linear) <= 1e-9 + 1e-9 * linear) continue;
            CAPTURE(facts.tagname, static_cast<int>(basis), nameOf(meaning), linear, drawn);
            CHECK(drawn == linear);
        }
    }
}

/// Slopes by a small deviation against the sensitivities of the budget.
void checkSlopes(const Dossier& dossier, Meaning meaning, Cases& cases) {
    const auto cooked = cook(dossier, meaning);
    if (!cooked) return;
    ++cases.recipes;
    for (const Basis basis : kAllBases) {
        const auto figures = figuresPer(basis, dossier, *cooked);
        if (!figures) continue;
        for (const Component component : {ENERC_KCAL, FAT, WATER, SUGAR, NA}) {
            const Figure& figure = (*figures)[component];
            // Cut at zero there is no slope.
            if (figures->block.known[indexOf(component)] <= 0) continue;
            const FigurePlan plan = planOf(component, *figures, dossier, *cooked);
            double variance = 0;
            for (std::size_t s = 0; s < plan.sources.size(); ++s) {
                const double step = plan.sources[s].source.u * 1e-5;
                const double slope =
                    (deviated(plan, s, step) - deviated(plan, s, -step)) / (2 * step);
                variance += slope * slope * plan.sources[s].source.u * plan.sources[s].source.u;
            }
            ++cases.figures;
            if (std::fabs(std::sqrt(variance) - figure.u) <= 1e-8 + 1e-4 * figure.u) continue;
            CAPTURE(factsOf(component).tagname, static_cast<int>(basis), nameOf(meaning));
            CHECK(std::sqrt(variance) == figure.u);
        }
    }
}

template <class Check>
Cases overRandomRecipes(std::uint32_t seed, int count, const Check& check) {
    Cases cases;
    RandomRecipes recipes{seed};
    for (int i = 0; i < count; ++i) {
        const auto dossier = recipes.next().dossier();
        REQUIRE(dossier);
        CAPTURE(i);
        check(*dossier, kMeanings[i % 3], cases);
    }
    return cases;
}

}  // namespace

TEST_CASE("without deviations a simulation gives the figure itself", "[simulation]") {
    const Cases cases = overRandomRecipes(1, 500, checkWithoutDeviation);
    CHECK(cases.recipes > 300);
    CHECK(cases.figures > 40'000);
}

TEST_CASE("a simulation moves with every source as the budget says to first order",
          "[simulation]") {
    const Cases cases = overRandomRecipes(2, 300, checkSlopes);
    CHECK(cases.recipes > 150);
    CHECK(cases.figures > 2'000);
}

TEST_CASE("the order of lines changes no draw", "[simulation]") {
    RandomRecipes recipes{3};
    int compared = 0;
    for (int i = 0; i < 40; ++i) {
        const Kitchen kitchen = recipes.next();
        const auto written = kitchen.dossier();
        const auto moved = withLinesMoved(kitchen, 5).dossier();
        const auto cooked = cook(*written);
        const auto again = cook(*moved);
        if (!cooked || !again) continue;
        const auto trials = [](const Dossier& dossier, const Cooked& dish) {
            const Figures figures = *figuresPer(Basis::Hundred, dossier, dish);
            std::vector<double> values(500);
            figureModel(ENERC_KCAL, figures, dossier, dish)(0, 1, values);
            return values;
        };
        CAPTURE(i);
        CHECK(trials(*written, *cooked) == trials(*moved, *again));
        ++compared;
    }
    CHECK(compared > 20);
}

TEST_CASE("where all is nearly linear and normal both intervals are one", "[simulation]") {
    Kitchen kitchen = withBeans();
    kitchen = withSeries(std::move(kitchen),
                         {"10.0", "10.2", "9.9",  "10.1", "9.8",  "10.0", "10.3", "9.7",  "10.1",
                          "9.9",  "10.2", "10.0", "9.8",  "10.1", "10.0", "9.9",  "10.2", "9.8",
                          "10.1", "10.0", "9.9",  "10.1", "10.0", "10.2", "9.8",  "10.0"},
                         "40");
    kitchen.line(R"({"id":"w","amount":"1","unit":"cup","food":"fennel"})");
    const Served served{kitchen};
    const Figures figures = figuresOf(served);
    const Simulation found = simulated(served, figures, PROCNT, 1'000'000);
    const Figure& figure = figures[PROCNT];
    const FigureInterval interval = intervalOf(figure);
    CHECK(found.mean == Approx(figure.value).epsilon(1e-3));
    CHECK(found.u == Approx(figure.u).epsilon(0.05));
    CHECK(found.low == Approx(interval.low).margin(0.02 * interval.halfWidth));
    CHECK(found.high == Approx(*interval.high).margin(0.02 * interval.halfWidth));
}

TEST_CASE("a mean of few readings is simulated as Student's t", "[simulation]") {
    const Served served{withSeries(withBeans(), {"10.0", "11.0", "12.0"}, "6")};
    const Figures figures = figuresOf(served);
    const Figure& figure = figures[PROCNT];
    // The series' mean and the pieces' scatter share one s: t with two degrees of freedom.
    CHECK(figure.freedom == Approx(2).margin(0.01));
    const Simulation found = simulated(served, figures, PROCNT, 1'000'000);
    for (const double p : {0.025, 0.2, 0.5, 0.9, 0.975}) {
        CAPTURE(p);
        const double t = studentT(p, 2);
        CHECK(found.probabilityAtMost(figure.value + t * figure.u) == Approx(p).margin(0.002));
    }
}

TEST_CASE("a rectangle is drawn about its own middle", "[simulation]") {
    // 70 kcal stand for 65 to 75, 4.5 g for 4.25 to 4.75; used by its own measure the serving
    // cancels.
    const Served served{
        withLabelledPaste().line(R"({"id":"p","amount":"4","unit":"tbsp","food":"paste"})")};
    const Figures figures = figuresOf(served);
    const Simulation energy = simulated(served, figures, ENERC_KCAL);
    CHECK(energy.sorted.front() >= 130);
    CHECK(energy.sorted.back() <= 150);
    CHECK(energy.low == Approx(130.5).margin(0.05));
    CHECK(energy.high == Approx(149.5).margin(0.05));
}

TEST_CASE("a rectangle beside its value is drawn beside it", "[simulation]") {
    // 50 kcal are printed for 47.5 to 55.
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"jam","name":"jam","label":{"rules":"us",
        "serving_grams":"20","serving":{"amount":"1","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"50"}]}})");
    kitchen.line(R"({"id":"p","amount":"1","unit":"tbsp","food":"jam"})");
    const Served served{kitchen};
    const Figures figures = figuresOf(served);
    CHECK(figures[ENERC_KCAL].value == Approx(50));
    const Simulation energy = simulated(served, figures, ENERC_KCAL);
    CHECK(energy.mean == Approx(51.25).margin(0.02));
    CHECK(energy.sorted.front() == Approx(47.5).margin(0.001));
    CHECK(energy.sorted.back() == Approx(55).margin(0.001));
}

TEST_CASE("a label's serving divides, and is drawn so", "[simulation]") {
    // 100 g at 70 kcal in 33 g: between 100 x 65 / 33.5 and 100 x 75 / 32.5.
    const Served served{
        withLabelledPaste().line(R"({"id":"p","amount":"100.0000","unit":"g","food":"paste"})")};
    const Simulation energy = simulated(served, figuresOf(served), ENERC_KCAL);
    CHECK(energy.sorted.front() > 100 * 65 / 33.5 - 0.01);
    CHECK(energy.sorted.front() < 100 * 65 / 33.5 + 0.5);
    CHECK(energy.sorted.back() < 100 * 75 / 32.5 + 0.01);
    CHECK(energy.sorted.back() > 100 * 75 / 32.5 - 0.5);
}

TEST_CASE("a range of pieces divides, and is drawn so", "[simulation]") {
    Kitchen kitchen = withBeans();
    kitchen.json("makes", R"({"pieces":"4-6","piece":"cake","plural":"cakes"})");
    kitchen.line(R"({"id":"l","amount":"100.0000","unit":"g","food":"beans"})");
    const Served served{kitchen};
    const Figures figures = figuresOf(served, Basis::Piece);
    const Simulation protein = simulated(served, figures, PROCNT);
    CHECK(figures[PROCNT].value == Approx(4));
    CHECK(protein.low == Approx(20 / 5.95).margin(0.01));
    CHECK(protein.high == Approx(20 / 4.05).margin(0.01));
    // To first order it would be 4 +- 0.9.
    CHECK(reasonToShow(PROCNT, figures, served.cooked, protein) == SimulationReason::Rectangle);
}

TEST_CASE("any one piece has its share drawn as well", "[simulation]") {
    Kitchen kitchen = withBeans();
    kitchen.line(R"({"id":"l","amount":"100.0000","unit":"g","food":"beans"})");
    Served served{kitchen};
    served.cooked = *cook(served.dossier, Meaning::AnyPiece);
    const Figures figures = figuresOf(served, Basis::Piece);
    const Simulation protein = simulated(served, figures, PROCNT);
    const Figure& figure = figures[PROCNT];
    const double half = studentT(0.975, figure.freedom) * figure.u;
    CHECK(figure.u > 0.1 * figure.value);
    CHECK(protein.low == Approx(figure.value - half).margin(0.01 * figure.value));
    CHECK(protein.high == Approx(figure.value + half).margin(0.01 * figure.value));
}

TEST_CASE("water that was poured off takes no more than there is", "[simulation]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"100","unit":"g","food":"fennel"})");
    kitchen.reading("left", "90", "", "residue");
    kitchen.json("residues", R"([{"water":true,"readings":["left"]}])");
    const Served served{kitchen};
    const Figures figures = figuresOf(served);
    const Simulation water = simulated(served, figures, WATER);
    CHECK(figures[WATER].value == Approx(0.21).margin(0.001));
    CHECK(water.sorted.front() == 0);
    CHECK(intervalOf(figures[WATER], water).low == 0);
}

TEST_CASE("the reason for a simulation is named", "[simulation]") {
    SECTION("one rectangle is more than half of the variance") {
        const Served served{
            withLabelledPaste().line(R"({"id":"p","amount":"4","unit":"tbsp","food":"paste"})")};
        CHECK(reasonToSimulate(ENERC_KCAL, figuresOf(served), served.cooked) ==
              SimulationReason::Rectangle);
        // Of sodium nothing is known, and nothing varies.
        CHECK_FALSE(reasonToSimulate(NA, figuresOf(served), served.cooked));
    }
    SECTION("fewer than four degrees of freedom") {
        const Served served{withSeries(withBeans(), {"10.0", "11.0", "12.0"}, "6")};
        CHECK(reasonToSimulate(PROCNT, figuresOf(served), served.cooked) ==
              SimulationReason::FewReadings);
    }
    SECTION("two readings that happen to be alike") {
        // The cups' assumed spread is larger and has eight degrees of freedom.
        Kitchen kitchen = withSeries(withBeans(), {"10.0", "10.1"}, "6");
        kitchen.line(R"({"id":"w","amount":"2","unit":"cup","food":"fennel"})");
        const Served served{kitchen};
        const Figures figures = figuresOf(served);
        CHECK(figures[PROCNT].freedom > 4);
        CHECK(reasonToSimulate(PROCNT, figures, served.cooked) == SimulationReason::FewReadings);
    }
    SECTION("none before, but the intervals differ") {
        const Served served{
            withSeries(withBeans(), {"10.0", "11.0", "12.0", "10.5", "11.5", "10.7"}, "6")};
        const Figures figures = figuresOf(served);
        CHECK_FALSE(reasonToSimulate(PROCNT, figures, served.cooked));
        const Simulation same = simulated(served, figures, PROCNT, 1'000'000);
        CHECK_FALSE(reasonToShow(PROCNT, figures, served.cooked, same));
        Simulation other = same;
        other.high += figures[PROCNT].u;
        CHECK(reasonToShow(PROCNT, figures, served.cooked, other) ==
              SimulationReason::Disagreement);
    }
}

TEST_CASE("the bounds of missing parts stand about a simulated interval", "[simulation]") {
    Figure figure;
    figure.value = 10;
    figure.atLeast = 9;
    figure.atMost = 14;
    Simulation simulation;
    simulation.low = 8;
    simulation.high = 13;
    const FigureInterval interval = intervalOf(figure, simulation);
    CHECK(interval.low == 7);
    CHECK(interval.high == 17);
    CHECK(interval.halfWidth == 2.5);
    figure.atMost.reset();
    CHECK_FALSE(intervalOf(figure, simulation).high);
    simulation.low = -1;
    CHECK(intervalOf(figure, simulation).low == 0);
}
