#pragma once

#include <cstddef>
#include <string_view>

#include "core/wording/line_scan.h"

namespace nettare {

/// "or" at `i` behind the food words: takes the alternative up to the next comma, bracket or turn
/// and completes the food by a noun that both share ("lamb or veal stock"). `i` where the "or"
/// begins something else, as "or to taste" does.
[[nodiscard]] std::size_t takeFoodAlternative(LineScan& scan, std::size_t i, Span food,
                                              bool onlyAdjectives);

/// A noun that may stand once for two foods ("stock", "wine"), in lower case.
[[nodiscard]] bool isSharedNoun(std::string_view lower);

/// A food by itself, that shares no noun with what follows "or": "butter", "water".
[[nodiscard]] bool standsAlone(std::string_view lower);

}  // namespace nettare
