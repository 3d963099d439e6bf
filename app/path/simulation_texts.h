#pragma once

#include <QString>

#include "core/nutrition/figures.h"
#include "core/simulation/figure_model.h"

namespace nettare {

/// "1 000 000".
[[nodiscard]] QString trialsText(std::uint64_t trials);

/// Why a simulation runs by itself, before it has an answer.
[[nodiscard]] QString reasonText(SimulationReason reason);

/// What a simulation says of a figure, whether it agrees with the law of propagation, and why its
/// interval is shown where it is.
[[nodiscard]] QString simulationText(const Figure& figure, Meaning meaning,
                                     const Simulation& simulation,
                                     std::optional<SimulationReason> shown);

}  // namespace nettare
