#include "core/nutrition/target.h"

#include <algorithm>
#include <cmath>

#include "core/nutrition/student_t.h"

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

/// Of a ceiling with a missing part that has no bound nothing can be promised.
double probabilityOf(const TargetEntry& target, const Figure& figure) {
    if (target.atMost && !figure.atMost) return 0;
    const double room = target.atMost ? target.atMost->value() - *figure.atMost
                                      : figure.atLeast - target.atLeast->value();
    if (figure.u == 0) return room >= 0 ? 1 : 0;
    return studentProbability(room / figure.u, figure.freedom);
}

/// Upper end of a portion `times` as large: all of it grows in proportion, but for the share of
/// single pieces, which evens out.
double upperEnd(const Figure& figure, double shareVariance, double times) {
    const double rest = std::max(0.0, figure.u * figure.u - shareVariance);
    const double u = std::sqrt(times * times * rest + times * shareVariance);
    return times * *figure.atMost + (u == 0 ? 0 : coverageFactor(figure.freedom) * u);
}

double shareVarianceOf(const Figures& figures, Component component) {
    const auto& sources = figures.block.sources;
    for (std::size_t s = 0; s < sources.size(); ++s)
        if (sources[s].key.kind == SourceKind::PieceShare) {
            const double part =
                figures.block.sensitivities[s * kComponentCount + indexOf(component)] *
                sources[s].u;
            return part * part;
        }
    return 0;
}

/// Bisection: the upper end grows with the portion.
std::optional<double> largestPortionOf(const TargetEntry& target, const Recipe& recipe,
                                       const Figures& figures, const Figure& figure) {
    if (target.per != Basis::Portion || !target.atMost || !figure.atMost) return std::nullopt;
    const double share = shareVarianceOf(figures, target.component);
    const double ceiling = target.atMost->value();
    if (upperEnd(figure, share, 1) == 0) return std::nullopt;
    double fits = 0;
    double tooLarge = 1;
    while (upperEnd(figure, share, tooLarge) <= ceiling) {
        fits = tooLarge;
        tooLarge *= 2;
    }
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = (fits + tooLarge) / 2;
        (upperEnd(figure, share, middle) <= ceiling ? fits : tooLarge) = middle;
    }
    return fits *
           (recipe.portionPieces ? recipe.portionPieces->value() : recipe.portionGrams->value());
}

}  // namespace

// Each target has its own basis, whatever the cook looks at.
Result<std::vector<TargetVerdict>> verdictsOf(const Dossier& dossier, const Cooked& cooked) {
    std::vector<TargetVerdict> verdicts;
    for (const TargetEntry& target : dossier.main().targets) {
        const auto figures = figuresPer(target.per, dossier, cooked);
        if (!figures) return fail(figures.error());
        const Figure& figure = (*figures)[target.component];
        TargetVerdict verdict;
        verdict.target = target;
        verdict.figure = figure;
        verdict.interval = intervalOf(figure);
        verdict.state = stateOf(target, figure, verdict.interval);
        verdict.probability = probabilityOf(target, figure);
        verdict.largestPortion = largestPortionOf(target, dossier.main(), *figures, figure);
        verdicts.push_back(std::move(verdict));
    }
    return verdicts;
}

}  // namespace nettare
