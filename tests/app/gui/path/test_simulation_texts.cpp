#include "app/gui/support/gui.h"
#include "app/path/simulation_card.h"
#include "app/path/simulation_texts.h"

#include <QPushButton>

namespace nettare {

namespace {

Figure simulatedFigure() {
    Figure figure;
    figure.component = Component::ENERC_KCAL;
    figure.value = figure.atLeast = 144;
    figure.atMost = 144;
    figure.u = 2.5;
    figure.freedom = std::numeric_limits<double>::infinity();
    return figure;
}

Simulation foundWithin(double low, double high) {
    Simulation simulation;
    simulation.trials = 1'000'000;
    simulation.mean = 144;
    simulation.u = 2.5;
    simulation.low = low;
    simulation.high = high;
    return simulation;
}

}  // namespace

TEST_CASE(
    "a simulation that agrees says its interval and that the law of propagation says it too") {
    CHECK(simulationText(simulatedFigure(), Meaning::ThisBatch, foundWithin(139.1, 148.9), {}) ==
          QStringLiteral("1\u202F000\u202F000 simulated batches: 139 to 149 kcal in 95\u00A0% of "
                         "them. The law of propagation says the same to two digits of the "
                         "uncertainty."));
}

TEST_CASE("a simulated interval that is shown says why") {
    const QString text = simulationText(simulatedFigure(), Meaning::AnyPiece,
                                        foundWithin(130.2, 158.9), SimulationReason::Disagreement);
    CHECK(text == QStringLiteral("1\u202F000\u202F000 simulated pieces: 130 to 159 kcal in "
                                 "95\u00A0% of them. The law of propagation says 139 to 149. Its "
                                 "interval stands at the top, since the two intervals differ "
                                 "within the two digits that an uncertainty has."));
}

TEST_CASE("every reason to simulate has words of its own") {
    CHECK(reasonText(SimulationReason::Rectangle).contains(QStringLiteral("half of the variance")));
    CHECK(reasonText(SimulationReason::FewReadings).contains(QStringLiteral("fewer than four")));
    CHECK(reasonText(SimulationReason::Disagreement).contains(QStringLiteral("differ")));
}

TEST_CASE("the card of a simulation offers, runs, and shows what came out") {
    SimulationCard card;
    showReady(card, {380, 200});
    auto& button = child<QPushButton>(card, "simulate");
    card.offer(QStringLiteral("not run yet"));
    CHECK(button.text().startsWith(QStringLiteral("Simulate 1\u202F000\u202F000")));
    card.showRunning({});
    CHECK(card.isRunning());
    CHECK(button.text() == QStringLiteral("Cancel"));
    card.showResult(QStringLiteral("139 to 149 kcal"));
    CHECK_FALSE(card.isRunning());
    CHECK(button.isHidden());
    CHECK(card.text() == QStringLiteral("139 to 149 kcal"));
}

}  // namespace nettare
