#pragma once

#include <cstddef>
#include <string_view>

#include "core/wording/line_scan.h"

namespace nettare {

/// A word for what is done in this kitchen, in lower case: "chopped", "finely-chopped". What is
/// bought so or tells the food's state ("ground", "smoked", "cooked") is none.
[[nodiscard]] bool isAct(std::string_view lower);

/// The token behind a phrase of doing at `i`: "chopped", "very finely chopped", "peeled and diced",
/// "peeled, diced"; `i` where there is none. Acts that belong to the next word ("crushed tomatoes")
/// are none.
[[nodiscard]] std::size_t actEnd(const LineScan& scan, std::size_t i);

/// A word that says of what kind or state a food is and cannot be the food itself: "boneless",
/// "fresh", "red". In lower case.
[[nodiscard]] bool isAdjective(std::string_view lower);

/// A state in which food is bought: after "frozen", "chopped" is bought so.
[[nodiscard]] bool isBoughtState(std::string_view lower);

}  // namespace nettare
