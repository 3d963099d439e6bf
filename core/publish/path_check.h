#pragma once

#include <optional>
#include <string>

#include "core/simulation/figure_model.h"

namespace nettare {

/// What stands below a path as plain text: what makes its interval, what to weigh next and what it
/// would bring, and what a simulation found where one was run. Fails as nextAct().
[[nodiscard]] Result<std::string> pathCheckText(Component component, const Figures& figures,
                                                const Dossier& dossier, const Cooked& cooked,
                                                const std::optional<Simulation>& simulation);

}  // namespace nettare
