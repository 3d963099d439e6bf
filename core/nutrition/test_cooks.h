#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// A weight of this cook and of other test cooks of the same revision. For the recipe mean it is
/// their mean, with s / sqrt(g) of the g cooks as one source of that key (JCGM 100:2008, 4.2.3), s
/// never below the rounding of one of them; else that of this cook alone. What their readings have
/// in common, such as a calibration, stays a source of its own.
[[nodiscard]] LinearForm weightOverCooks(const LinearForm& own,
                                         const std::vector<LinearForm>& others, SourceKey key,
                                         Meaning meaning);

}  // namespace nettare
