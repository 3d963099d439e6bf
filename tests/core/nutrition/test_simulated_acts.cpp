#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/label/us_rounding.h"
#include "core/nutrition/next_act.h"
#include "core/nutrition/weigh.h"
#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

// What nextAct() expects of an act against the mean of 1,000 acts: the truth is drawn from the
// stated laws, the scale or the label rounds it, and everything is computed anew.

namespace {

constexpr int kActs = 1000;

class Draws {
public:
    explicit Draws(std::mt19937::result_type seed) : random_{seed} {}

    double uniform() { return (static_cast<double>(random_()) + 0.5) / 4294967296.0; }
    double normal() {
        return std::sqrt(-2 * std::log(uniform())) * std::cos(2 * std::acos(-1.0) * uniform());
    }
    double of(const Source& source) {
        if (source.law == Law::Normal) return source.u * normal();
        const double width = std::sqrt(12 * (source.u * source.u - source.offset * source.offset));
        return source.offset + width * (uniform() - 0.5);
    }
    double of(const LinearForm& form) {
        double value = form.value();
        for (const LinearForm::Term& term : form.terms())
            value += term.sensitivity * of(term.source);
        return value;
    }

private:
    std::mt19937 random_;
};

/// A reading of that true weight by the first scale, which shows whole grams; the empty scale rests
/// anywhere within its step.
std::size_t weighTruth(Dossier& dossier, double grams, WeighedState state, Draws& draws) {
    const double rest = draws.uniform() - 0.5;
    const std::size_t tare = dossier.indications.size();
    dossier.indications.push_back({"t", 0, Decimal{}, WeighedState::Empty, {}});
    dossier.indications.push_back(
        {"g", 0, roundedToStep(Decimal::fromDouble(grams + rest), Decimal{1, 0}), state, {}});
    dossier.readings.push_back({"r", tare + 1, Reading::ShownTare{tare}, 1});
    return dossier.readings.size() - 1;
}

double halfWidthOf(const Dossier& dossier, Component component, Basis basis) {
    const Cooked cooked = Served::orThrow(cook(dossier));
    return intervalOf(Served::orThrow(figuresPer(basis, dossier, cooked))[component]).halfWidth;
}

double expected(const Served& served, Act act, Component component, Basis basis) {
    const auto next = Served::orThrow(nextAct(component, basis, served.dossier, served.cooked));
    const auto found = std::ranges::find(next.outcomes, act, &ActOutcome::act);
    REQUIRE(found != next.outcomes.end());
    return found->halfWidth;
}

/// Mean half-width over acts that `change` carries out on a fresh copy of the dossier.
template <class Change>
double meanHalfWidth(const Served& served, Component component, Basis basis, Change change) {
    double sum = 0;
    for (int i = 0; i < kActs; ++i) {
        Dossier dossier = served.dossier;
        change(dossier);
        sum += halfWidthOf(dossier, component, basis);
    }
    return sum / kActs;
}

/// Fennel by the table's bulb, oil by the spoon, prawns of a spread table row by weight.
Kitchen threeLines() {
    TableFood prawn = kitchen::row("1", "prawn");
    const std::pair<Component, double> values[] = {{ENERC_KCAL, 85}, {WATER, 78.45}, {PROCNT, 20.1},
                                                   {FAT, 0.51},      {ASH, 0.94},    {CHOCDF, 0}};
    for (const auto& [component, value] : values) kitchen::set(prawn, component, value);
    prawn.profile.spread[indexOf(PROCNT)] = {0.8, 8, {}};
    prawn.profile.spread[indexOf(FAT)] = {0.05, 8, {}};
    Kitchen kitchen = Kitchen{}.row("prawns", prawn).reading("p", "600");
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel"})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})");
    return kitchen.line(R"({"id":"p","amount":"1","piece":"lot","food":"prawns","weighed":["p"]})");
}

Kitchen pieces(int weighed, Draws& draws) {
    Kitchen kitchen;
    std::string ids;
    for (int i = 0; i < weighed; ++i) {
        const std::string id = "b" + std::to_string(i);
        kitchen.reading(id, std::to_string(std::lround(234 + 25 * draws.normal())));
        ids += (ids.empty() ? "\"" : ",\"") + id + "\"";
    }
    kitchen.append(
        "series",
        R"({"id":"b","name":"bulbs","kind":"per piece","of":"bulb","readings":[)" + ids + "]}");
    return kitchen.line(R"({"id":"f","amount":"12","piece":"bulb","food":"fennel",
        "series":{"id":"b","use":"others"}})");
}

}  // namespace

TEST_CASE("weighing a line brings what is expected of it", "[nutrition]") {
    const Served served{threeLines()};
    Draws draws{1};
    for (const std::size_t line : {0U, 1U}) {
        const double mean = meanHalfWidth(served, ENERC_KCAL, Basis::Piece, [&](Dossier& dossier) {
            const double grams = draws.of(served.way(line).grams);
            dossier.recipes.front().lines[line].weighed = {
                weighTruth(dossier, grams, WeighedState::EdiblePortion, draws)};
        });
        CHECK(expected(served, {ActKind::WeighLine, line}, ENERC_KCAL, Basis::Piece) ==
              Approx(mean).epsilon(0.1));
    }
}

TEST_CASE("weighing two more pieces brings what is expected of it", "[nutrition]") {
    Draws draws{2};
    for (const int weighed : {3, 5, 10}) {
        CAPTURE(weighed);
        const Served served{pieces(weighed, draws)};
        const PieceStatistics now = *served.way(0).why.series;
        const double mean = meanHalfWidth(served, ENERC_KCAL, Basis::Batch, [&](Dossier& dossier) {
            const double centre = now.mean + now.spread / std::sqrt(now.pieces) * draws.normal();
            for (int piece = 0; piece < 2; ++piece) {
                const std::size_t reading =
                    weighTruth(dossier, centre + now.spread * draws.normal(),
                               WeighedState::EdiblePortion, draws);
                dossier.series.front().readings.push_back(reading);
            }
        });
        CHECK(expected(served, {ActKind::WeighTwoMore, 0}, ENERC_KCAL, Basis::Batch) ==
              Approx(mean).epsilon(0.1));
    }
}

TEST_CASE("reading a label brings what is expected of it", "[nutrition]") {
    const Served served{threeLines()};
    const std::size_t food = std::get<FoodIndex>(served.dossier.main().lines[2].what).index;
    const Composition& values = served.cooked.compositions[food];
    Draws draws{3};
    for (const Component component : {ENERC_KCAL, PROCNT}) {
        const double mean = meanHalfWidth(served, component, Basis::Piece, [&](Dossier& dossier) {
            PerComponent<double> truth{};
            for (std::size_t k = 0; k < kComponentCount; ++k) truth[k] = values.amounts[k].perGram;
            for (const CompositionSource& source : values.sources) {
                const double off = draws.of(source.source);
                for (const Effect& effect : source.effects)
                    truth[indexOf(effect.component)] += effect.perGram * off;
            }
            LabelFacts label{
                LabelRules::Us, Decimal{30, 0}, Amount{Fraction{1}, Fraction{1}, "1"}, "scoop", {}};
            for (const Component part : {ENERC_KCAL, PROCNT, FAT, CHOCDF})
                label.amounts.push_back(
                    {part, *usAmountText(part, std::max(0.0, truth[indexOf(part)] * 30))});
            dossier.foods[food].label = label;
        });
        CHECK(expected(served, {ActKind::ReadLabel, food}, component, Basis::Piece) ==
              Approx(mean).epsilon(0.1));
    }
}

TEST_CASE("weighing the dish brings what is expected of it", "[nutrition]") {
    const Served served{threeLines()};
    Draws draws{4};
    const double mean = meanHalfWidth(served, FAT, Basis::Hundred, [&](Dossier& dossier) {
        const double grams = draws.of(served.cooked.eaten.used);
        dossier.recipes.front().cooked = {weighTruth(dossier, grams, WeighedState::Cooked, draws)};
    });
    CHECK(expected(served, {ActKind::WeighDish, 0}, FAT, Basis::Hundred) ==
          Approx(mean).epsilon(0.1));
}
