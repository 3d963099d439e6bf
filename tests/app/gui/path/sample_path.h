#pragma once

#include "core/publish/path.h"

namespace nettare {

/// The path of a figure of so many lines, each of grams that were weighed and a value of a table;
/// the second line's grams are from a label.
[[nodiscard]] PathStep samplePath(int lines);

}  // namespace nettare
