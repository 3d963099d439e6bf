#pragma once

#include <vector>

#include "core/publish/compared_figures.h"
#include "core/publish/compared_lines.h"
#include "core/publish/compared_method.h"

namespace nettare {

/// Two states of a recipe side by side. Differences are after - before.
struct Comparison {
    std::vector<ComparedLine> lines;
    double gramsBefore = 0, gramsAfter = 0;  ///< eaten, of the batch, before cooking
    FigureDifference batchEnergy;            ///< kcal of the batch
    /// Per portion; per piece where a side has portions in grams and no cooked weight.
    Basis basis = Basis::Portion;
    PerComponent<FigureDifference> figures;
    std::vector<TargetChange> targets;
    std::vector<StepDifference> method;
};

/// The components that Compare shows first, in their order.
inline constexpr std::array kMainComponents{
    Component::ENERC_KCAL, Component::FAT,   Component::FASAT,  Component::CHOCDF,
    Component::SUGAR,      Component::FIBTG, Component::PROCNT, Component::NA};

/// Fails: CookedWeightMissing for a target per portion in grams of a dish that was not weighed.
[[nodiscard]] Result<Comparison> compared(const ComparedState& before, const ComparedState& after);

}  // namespace nettare
