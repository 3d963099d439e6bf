#include "app/command_line/kept_revisions.h"

#include <algorithm>

namespace nettare {

Result<KeptRevisions> KeptRevisions::of(const Kitchen& kitchen) {
    auto shelved = kitchen.recipes();
    if (!shelved) return fail(shelved.error());
    KeptRevisions kept;
    for (ShelvedRecipe& recipe : *shelved) {
        if (recipe.revisions == 0) continue;
        kept.recipes_.push_back({std::move(recipe.id), kept.size_});
        kept.size_ += static_cast<std::size_t>(recipe.revisions);
    }
    return kept;
}

KeptReference KeptRevisions::at(std::size_t place) const {
    const auto after = std::ranges::upper_bound(recipes_, place, {}, &Recipe::first);
    const Recipe& recipe = *std::prev(after);
    return {recipe.id, static_cast<int>(place - recipe.first) + 1};
}

}  // namespace nettare
