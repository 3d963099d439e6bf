#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// Singulars that an English word in lower case may be the plural of, and plurals that it does not
/// merely begin: "potatoes" gives "potatoe" and "potato", "leaf" gives "leaves". Spelling rules
/// only, so some forms are no words; they find nothing.
[[nodiscard]] std::vector<std::string> otherForms(std::string_view word);

/// The word, with all singulars and plurals that it may stand beside: of "tomatos" "tomato" and
/// "tomatoes", too.
[[nodiscard]] std::vector<std::string> allForms(std::string_view word);

/// True for the same word, or singular and plural of one.
[[nodiscard]] bool sameWord(std::string_view a, std::string_view b);

}  // namespace nettare
