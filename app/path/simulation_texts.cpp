#include "app/path/simulation_texts.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/path/path_texts.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct SimulationTexts {
    Q_DECLARE_TR_FUNCTIONS(SimulationTexts)
};

QString foundText(const Figure& figure, Meaning meaning, const Simulation& simulation) {
    const auto unitView = factsOf(figure.component).unit;
    const auto unit = QString::fromUtf8(unitView.data(), static_cast<qsizetype>(unitView.size()));
    const QString ends = endsText(figure.component, intervalOf(figure, simulation));
    const QString trials = trialsText(simulation.trials);
    return meaning == Meaning::AnyPiece
               ? SimulationTexts::tr("%1 simulated pieces: %2 %3 in 95\u00A0% of them.")
                     .arg(trials, ends, unit)
               : SimulationTexts::tr("%1 simulated batches: %2 %3 in 95\u00A0% of them.")
                     .arg(trials, ends, unit);
}

QString shownBecause(SimulationReason reason) {
    return SimulationTexts::tr("Its interval stands at the top, since %1.").arg(reasonText(reason));
}

}  // namespace

QString trialsText(std::uint64_t trials) {
    return QString::fromStdString(numberAt(0, static_cast<double>(trials)));
}

QString reasonText(SimulationReason reason) {
    switch (reason) {
        case SimulationReason::Rectangle:
            return SimulationTexts::tr(
                "one source that may lie anywhere between two ends, as a rounding does, makes more "
                "than half of the variance");
        case SimulationReason::FewReadings:
            return SimulationTexts::tr(
                "the spread rests on fewer than four effective degrees of freedom");
        case SimulationReason::Disagreement:
            return SimulationTexts::tr(
                "the two intervals differ within the two digits that an uncertainty has");
    }
    return {};
}

QString simulationText(const Figure& figure, Meaning meaning, const Simulation& simulation,
                       std::optional<SimulationReason> shown) {
    QStringList sentences{foundText(figure, meaning, simulation)};
    const FigureInterval known = intervalOf(figure);
    const bool same =
        agree(figure.u, figure.value - known.halfWidth, figure.value + known.halfWidth, simulation);
    sentences << (same ? SimulationTexts::tr("The law of propagation says the same to two digits "
                                             "of the uncertainty.")
                       : SimulationTexts::tr("The law of propagation says %1.")
                             .arg(endsText(figure.component, known)));
    if (shown) sentences << shownBecause(*shown);
    return sentences.join(u' ');
}

}  // namespace nettare
