#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// A name that kitchens use, and what a table calls the food.
struct KitchenName {
    /// Words of which the food's name must hold one, singular or plural, lower case.
    using AnyOf = std::vector<std::string>;

    std::string name;
    AnyOf head;                      ///< before the first comma of the food's name
    std::vector<AnyOf> others;       ///< anywhere in it
    std::vector<std::string> never;  ///< nowhere in it
};

/// Reads lines of "name|words", as at the head of resources/kitchen_names/names.txt; lines without
/// a name or a head are left out.
[[nodiscard]] std::vector<KitchenName> readKitchenNames(std::string_view text);

/// The names of the program's list, resources/kitchen_names/names.txt, for a food that a table
/// calls so; in the order of the list.
[[nodiscard]] std::vector<std::string> kitchenNamesOf(std::string_view foodName);

}  // namespace nettare
