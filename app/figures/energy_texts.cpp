#include "app/figures/energy_texts.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct EnergyWords {
    Q_DECLARE_TR_FUNCTIONS(EnergyTexts)
};

bool isEnergyOf(const TargetVerdict& verdict, Basis basis) {
    return verdict.target.component == Component::ENERC_KCAL && verdict.target.per == basis;
}

}  // namespace

const TargetVerdict* energyVerdict(const Evaluation& evaluation, Basis basis) {
    for (const TargetVerdict& verdict : evaluation.verdicts)
        if (isEnergyOf(verdict, basis)) return &verdict;
    return nullptr;
}

QString energySentence(const Evaluation& evaluation, const Figure& energy, Basis basis) {
    QString spread = energy.complete() ? EnergyWords::tr("%1 (95 %)").arg(figureSpread(energy))
                                       : knownFor(energy);
    const TargetVerdict* verdict = energyVerdict(evaluation, basis);
    if (verdict == nullptr) return spread;
    return EnergyWords::tr("%1 · %2").arg(spread,
                                          verdictText(*verdict, evaluation.dossier.main(), false));
}

BeamFigure energyBeam(const Evaluation& evaluation, const Figure& energy, Basis basis) {
    const FigureInterval interval = intervalOf(energy);
    BeamFigure beam;
    beam.value = energy.complete() ? energy.value : energy.atLeast;
    beam.low = interval.low;
    beam.high = interval.high;
    beam.valueText = figureValue(energy);
    beam.plusMinusText = figureSpread(energy).mid(2);
    beam.unit = QStringLiteral("kcal");
    for (const TargetVerdict& verdict : evaluation.verdicts) {
        if (!isEnergyOf(verdict, basis)) continue;
        if (const auto& most = verdict.target.atMost) {
            beam.ceiling = most->value();
            beam.ceilingText = QString::fromStdString(most->text());
        }
        if (const auto& least = verdict.target.atLeast) {
            beam.floor = least->value();
            beam.floorText = QString::fromStdString(least->text());
        }
    }
    return beam;
}

QString otherTargets(const Evaluation& evaluation, Basis basis) {
    QStringList lines;
    const TargetVerdict* shown = energyVerdict(evaluation, basis);
    for (const TargetVerdict& verdict : evaluation.verdicts)
        if (&verdict != shown) lines += verdictText(verdict, evaluation.dossier.main(), true);
    return lines.join(QLatin1Char{'\n'});
}

}  // namespace nettare
