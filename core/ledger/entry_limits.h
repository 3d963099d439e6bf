#pragma once

#include <cstddef>
#include <string_view>

#include "core/recipe/read_recipe.h"

namespace nettare {

// What entries of the ledger may hold, beside the limits of documents.

inline constexpr int kMostPiecesWeighed = 9999;
inline constexpr std::size_t kWhyLength = 2 * kNameLength;   ///< it may hold the title of a recipe
inline constexpr long long kMostEntriesOfChain = 1LL << 53;  ///< what a JSON number holds exactly

/// Whether a text is of hexadecimal digits in lower case alone.
[[nodiscard]] bool isHexadecimal(std::string_view text);
/// 8-4-4-4-12 of them, as a UUID.
[[nodiscard]] bool isUuidForm(std::string_view text);

}  // namespace nettare
