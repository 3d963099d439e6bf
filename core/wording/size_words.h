#pragma once

#include <cstddef>
#include <string_view>

#include "core/wording/line_scan.h"

namespace nettare {

/// The token behind the words of size at `i`: "large", "medium to large", "extra large",
/// "thumb-sized"; `i` where there are none. Words that say a size of pieces only ("thick") count
/// where `ofPiece`.
[[nodiscard]] std::size_t sizeEnd(const LineScan& scan, std::size_t i, bool ofPiece);

/// "thick", "fat": a size before a piece, else a word of the food. In lower case.
[[nodiscard]] bool isSizeOfPiece(std::string_view lower);

/// The token behind a length at `i`: "2-inch", "7 cm", "1 to 2 inches"; `i` where there is none.
[[nodiscard]] std::size_t lengthEnd(const LineScan& scan, std::size_t i);

/// The token behind a measure of size that fills a bracket or a stretch between commas: "about 7 cm
/// across", "the size of a walnut"; `i` where there is none.
[[nodiscard]] std::size_t sizePhraseEnd(const LineScan& scan, std::size_t i, std::size_t limit);

}  // namespace nettare
