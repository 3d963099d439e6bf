#pragma once

#include "core/label/label_entry.h"

namespace nettare {

/// What a new label begins with: rules and amounts-per of the label before, by the settings of this
/// machine, and the day.
[[nodiscard]] LabelTyped usualLabel();

/// The next new label begins like this one.
void rememberLabel(const LabelTyped& typed);

}  // namespace nettare
