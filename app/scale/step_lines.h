#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/support/json.h"

namespace nettare {

/// The lines whose foods a step's text names, in the recipe's order: by the last
/// word of its name, in the singular or the plural ("paprika" for smoked paprika), or by the whole
/// name where several foods end in that word. A text that says "everything" names all. What words
/// cannot tell is the cook's to tick.
[[nodiscard]] std::vector<std::string> linesNamedIn(const Json& document, std::string_view text);

}  // namespace nettare
