#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// The shelf: see Kitchen.

[[nodiscard]] std::vector<ShelvedRecipe> shelf(KitchenStore& store);
[[nodiscard]] std::vector<ShelvedRecipe> shelfWith(KitchenStore& store, std::string_view words);
[[nodiscard]] Result<std::string> addToShelf(KitchenStore& store, const Json& document,
                                             const std::string& at);
[[nodiscard]] Result<std::string> shelvedAs(KitchenStore& store, std::string_view idOrTitle);

/// An id from a title: "Charred prawn & fennel" is "charred-prawn-fennel". "recipe" where no letter
/// or digit of the title can stand in an id.
[[nodiscard]] std::string slugOf(std::string_view title);

}  // namespace nettare
