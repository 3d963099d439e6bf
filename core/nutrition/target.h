#pragma once

#include "core/nutrition/figures.h"

namespace nettare {

/// Whether a figure keeps to a ceiling or a floor of the recipe. A ceiling is not met while the
/// upper end of the interval exceeds it, a floor not while the lower end falls short.
enum class TargetState { Met, ValueOnly, NotMet };

struct TargetVerdict {
    TargetEntry target{};
    TargetState state =
        TargetState::NotMet;  ///< ValueOnly: the value keeps to it, the interval not
    Figure figure;
    FigureInterval interval;
};

/// The verdict on every target of the main recipe, in its order. Fails as figuresPer() does.
[[nodiscard]] Result<std::vector<TargetVerdict>> verdictsOf(const Dossier& dossier,
                                                            const Cooked& cooked);

}  // namespace nettare
