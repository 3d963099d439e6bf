#pragma once

#include <string_view>

namespace nettare {

/// resources/kitchen_names/names.txt
[[nodiscard]] std::string_view kitchenNamesText();
/// resources/kitchen_names/words.txt
[[nodiscard]] std::string_view alikeWordsText();

}  // namespace nettare
