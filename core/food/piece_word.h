#pragma once

#include <string>
#include <string_view>

namespace nettare {

// The words by which pieces are counted, by the common rules of English spelling and the exceptions
// that kitchens use (from memory). Only the last word of several counts: "large eggs".

/// "bulbs" to "bulb", "leaves" to "leaf"; a word that is no plural stays.
[[nodiscard]] std::string singularOf(std::string_view word);

/// "bulb" to "bulbs", "leaf" to "leaves"; a plural stays.
[[nodiscard]] std::string pluralOf(std::string_view word);

/// True for two forms of one word: "bulb" and "bulbs".
[[nodiscard]] bool samePiece(std::string_view a, std::string_view b);

}  // namespace nettare
