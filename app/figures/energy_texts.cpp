#include "app/figures/energy_texts.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "app/path/simulation_texts.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct EnergyWords {
    Q_DECLARE_TR_FUNCTIONS(EnergyTexts)
};

bool isEnergyOf(const TargetVerdict& verdict, Basis basis) {
    return verdict.target.component == Component::ENERC_KCAL && verdict.target.per == basis;
}

/// What the largest portion that is safe would have; nothing where it is larger than the one asked.
std::optional<double> valueOfSafePortion(const TargetVerdict& verdict, const Recipe& recipe) {
    if (!verdict.largestPortion) return {};
    const double portion =
        recipe.portionPieces ? recipe.portionPieces->value() : recipe.portionGrams->value();
    if (*verdict.largestPortion >= portion) return {};
    return verdict.figure.value * *verdict.largestPortion / portion;
}

}  // namespace

const TargetVerdict* energyVerdict(const Evaluation& evaluation, Basis basis) {
    for (const TargetVerdict& verdict : evaluation.verdicts)
        if (isEnergyOf(verdict, basis)) return &verdict;
    return nullptr;
}

QString energySentence(const Evaluation& evaluation, const Figure& energy, Basis basis) {
    QString words = energy.complete() ? EnergyWords::tr("%1 (95 %)").arg(figureSpread(energy))
                                      : knownFor(energy);
    const Recipe& recipe = evaluation.dossier.main();
    if (const TargetVerdict* verdict = energyVerdict(evaluation, basis)) {
        words = EnergyWords::tr("%1 · %2").arg(words, verdictText(*verdict, recipe, false));
        if (const QString safe = safePortion(*verdict, recipe); !safe.isEmpty())
            words = EnergyWords::tr("%1. %2").arg(words, safe);
    }
    const auto& figures = evaluation[basis];
    const auto reason = figures
                            ? reasonToSimulate(Component::ENERC_KCAL, *figures, evaluation.cooked)
                            : std::nullopt;
    if (!reason) return words;
    return EnergyWords::tr("%1\nWhere it comes from (F7) shows a simulated interval, since %2.")
        .arg(words, reasonText(*reason));
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
            beam.safe = valueOfSafePortion(verdict, evaluation.dossier.main());
            beam.safeText = safePortion(verdict, evaluation.dossier.main());
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
