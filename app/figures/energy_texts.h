#pragma once

#include <QString>

#include "app/session/evaluation.h"
#include "app/widgets/beam_gauge.h"

namespace nettare {

/// The verdict on the energy of that basis; null where it has no ceiling or floor.
[[nodiscard]] const TargetVerdict* energyVerdict(const Evaluation& evaluation, Basis basis);

/// "± 5 (95 %) · under the ceiling of 150 kcal: met, the upper end is 149"
[[nodiscard]] QString energySentence(const Evaluation& evaluation, const Figure& energy,
                                     Basis basis);

/// The same for the gauge.
[[nodiscard]] BeamFigure energyBeam(const Evaluation& evaluation, const Figure& energy,
                                    Basis basis);

/// Every other target, one a line; empty for none.
[[nodiscard]] QString otherTargets(const Evaluation& evaluation, Basis basis);

}  // namespace nettare
