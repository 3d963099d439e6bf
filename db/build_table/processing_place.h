#pragma once

#include <string_view>

namespace nettare {

/// How far a food is from the plain thing; the first criterion of a search's order.
enum class ProcessingPlace {
    Plain,      ///< raw, fresh or dry as it is bought: "onion, raw", "lentils, dry"
    Processed,  ///< one food, cooked, preserved or ground to powder: "carrots, boiled"
    Composed,   ///< made of several: sauces, sausages, bread, stock, sweets
    Branded,    ///< a product under its maker's name
};

/// Told by the food's group and the words of its name.
[[nodiscard]] ProcessingPlace processingPlace(std::string_view name, std::string_view group);

}  // namespace nettare
