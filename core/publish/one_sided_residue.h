#pragma once

#include <optional>
#include <string>

#include "core/publish/compared_state.h"

namespace nettare {

/// What is left over of `state`, was weighed, and takes some of the component with it, while
/// `other` has the same thing and weighed nothing of the kind: "what stayed in the bowl". A thing
/// that `other` does not have at all is a change of the recipe, and comparable. `raw`: the figure
/// is per 100 g before cooking, so that bones count as well.
[[nodiscard]] std::optional<std::string> oneSidedResidue(Component component, bool raw,
                                                         const ComparedState& state,
                                                         const ComparedState& other);

}  // namespace nettare
