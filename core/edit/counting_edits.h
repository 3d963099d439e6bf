#pragma once

#include <string_view>

#include "core/edit/line_edits.h"

namespace nettare {

// Edits of what counts where the recipe leaves it open.

/// One of the rules of Counting.
enum class CountingRule { ToTaste, Optional, Ranges, Makes };

/// Sets a rule by its word in documents: "left out", "a pinch a portion", "counted", "between",
/// "middle", "least", "most"; empty gives it its default back. Fails: NotOneOf, with all words
/// there are.
[[nodiscard]] Result<Edit> setCounting(const Json& document, CountingRule rule,
                                       std::string_view word);

/// Whether the recipe can do without a line. Fails: UnknownReference.
[[nodiscard]] Result<LineEdit> setOptional(const Json& document, std::string_view line,
                                           bool optional);

}  // namespace nettare
