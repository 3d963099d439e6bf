#pragma once

#include "core/nutrition/next_act.h"

namespace nettare {

/// Everything that can still be done about a figure, in the order of ActKind and of the recipe.
/// `shares` are those of the figure now.
[[nodiscard]] std::vector<Act> openActs(Component component, Basis basis, const Dossier& dossier,
                                        const Cooked& cooked,
                                        const std::vector<BudgetShare>& shares);

/// Whether a label prints that component, as panels do (21 CFR 101.9(c)).
[[nodiscard]] bool labelsPrint(Component component);

}  // namespace nettare
