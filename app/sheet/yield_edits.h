#pragma once

#include <string>

#include "core/edit/edit.h"

namespace nettare {

// The edits behind the row below the title: what a cook types there as one text.

/// "10 skewers": the count, and the words for one piece and for several where they are others.
[[nodiscard]] Result<Edit> makesEdit(const Json& document, const std::string& typed);
/// "2 skewers" or "150 g".
[[nodiscard]] Result<Edit> portionEdit(const Json& document, const std::string& typed);
/// "150 kcal", "150 kcal per skewer"; empty text takes the ceiling away.
[[nodiscard]] Result<Edit> ceilingEdit(const Json& document, const std::string& typed);

}  // namespace nettare
