#include "core/nutrition/target.h"

namespace nettare {

namespace {

TargetState stateOf(const TargetEntry& target, const Figure& figure,
                    const FigureInterval& interval) {
    if (target.atMost) {
        const double ceiling = target.atMost->value();
        if (interval.high && *interval.high <= ceiling) return TargetState::Met;
        const bool valueKeeps = figure.atMost && *figure.atMost <= ceiling;
        return valueKeeps ? TargetState::ValueOnly : TargetState::NotMet;
    }
    const double floor = target.atLeast->value();
    if (interval.low >= floor) return TargetState::Met;
    return figure.atLeast >= floor ? TargetState::ValueOnly : TargetState::NotMet;
}

}  // namespace

// Each target has its own basis, whatever the cook looks at.
Result<std::vector<TargetVerdict>> verdictsOf(const Dossier& dossier, const Cooked& cooked) {
    std::vector<TargetVerdict> verdicts;
    for (const TargetEntry& target : dossier.main().targets) {
        const auto figures = figuresPer(target.per, dossier, cooked);
        if (!figures) return fail(figures.error());
        const Figure& figure = (*figures)[target.component];
        const FigureInterval interval = intervalOf(figure);
        verdicts.push_back({target, stateOf(target, figure, interval), figure, interval});
    }
    return verdicts;
}

}  // namespace nettare
