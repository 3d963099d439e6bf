#pragma once

#include "core/nutrition/figures.h"
#include "core/simulation/simulation.h"

namespace nettare {

/// Simulates one figure of the known parts: the sources are drawn by their laws, grams and
/// compositions are multiplied and divided as they are, not to first order. Sources that share one
/// estimated s share its draw.
[[nodiscard]] DrawChunk figureModel(Component component, const Figures& figures,
                                    const Dossier& dossier, const Cooked& cooked);

/// Why the interval of the law of propagation is not enough.
enum class SimulationReason {
    Rectangle,  ///< one rectangular source is more than half of the variance
    /// Fewer than four effective degrees of freedom, or an estimated s with fewer than four that
    /// brings more than a hundredth of the variance: it may have come out far too small.
    FewReadings,
    Disagreement  ///< the simulated interval is another one (JCGM 101:2008, clause 8)
};

/// Why a simulated interval is to be shown, as far as that is known without a simulation.
[[nodiscard]] std::optional<SimulationReason> reasonToSimulate(Component component,
                                                               const Figures& figures,
                                                               const Cooked& cooked);
/// The same with the simulation at hand.
[[nodiscard]] std::optional<SimulationReason> reasonToShow(Component component,
                                                           const Figures& figures,
                                                           const Cooked& cooked,
                                                           const Simulation& simulation);

/// The simulated interval with the bounds of missing parts added, its low end never below zero.
[[nodiscard]] FigureInterval intervalOf(const Figure& figure, const Simulation& simulation);

}  // namespace nettare
