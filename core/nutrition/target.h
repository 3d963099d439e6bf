#pragma once

#include "core/nutrition/figures.h"

namespace nettare {

/// Whether a figure keeps to a ceiling or a floor of the recipe. A ceiling is not met while the
/// upper end of the interval exceeds it, a floor not while the lower end falls short.
enum class TargetState { Met, ValueOnly, NotMet };

struct TargetVerdict {
    TargetEntry target{};
    /// That the figure keeps to the target, 0 to 1, by Student's t; the end of missing parts that
    /// counts against it.
    double probability = 0;
    /// The largest portion whose interval meets a ceiling per portion, in pieces or in grams as the
    /// recipe gives its portion; nothing for other targets.
    std::optional<double> largestPortion{};
    TargetState state =
        TargetState::NotMet;  ///< ValueOnly: the value keeps to it, the interval not
    Figure figure;
    FigureInterval interval;
};

/// The verdict on every target of the main recipe, in its order. Fails as figuresPer() does.
[[nodiscard]] Result<std::vector<TargetVerdict>> verdictsOf(const Dossier& dossier,
                                                            const Cooked& cooked);

}  // namespace nettare
