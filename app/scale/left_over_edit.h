#pragma once

#include "app/scale/left_over.h"
#include "core/edit/weighing_edits.h"

namespace nettare {

/// Puts a reading of what is left over into the document and binds it. A residue of the same lines
/// or food gets it and takes over what is said now of name and step; a food of the table that ran
/// off comes along. Fails as recordReading().
[[nodiscard]] Result<Edit> leftOverEdit(const Json& document, RecordedReading reading,
                                        const LeftOver& left);

}  // namespace nettare
