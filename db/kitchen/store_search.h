#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// Fills the indexes of words and foods anew from all drafts; one that cannot be read is left out.
void fillSearch(KitchenStore& store);

/// Brings the indexes up to a draft's document, where its words or foods changed.
void indexDraft(KitchenStore& store, const std::string& recipe, const Json& document);

/// Ids of the recipes that hold all the words, each as the start of a word or in another number.
[[nodiscard]] std::vector<std::string> recipesWith(KitchenStore& store, std::string_view words);

}  // namespace nettare
