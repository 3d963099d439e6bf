#pragma once

#include <string>
#include <vector>

#include "app/command_line/show_recipe.h"
#include "core/ledger/ledger_reading.h"
#include "core/nutrition/enough_weighings.h"
#include "core/support/json.h"

namespace nettare {

/// What more weighings of a series do for the ceilings and floors of a recipe that follows it.
struct SeriesPromise {
    Recipe recipe;
    std::vector<EnoughWeighings> answers;
};

/// Fails: SeriesNotFollowed, or as `open` and enoughWeighings() do.
[[nodiscard]] Result<SeriesPromise> promiseOf(const OpenRecipe& open, const std::string& recipe,
                                              const SeriesKey& key,
                                              const std::vector<std::string>& tags);

/// A sentence and a line break for each; says so where the series touches no ceiling or floor.
[[nodiscard]] std::string promiseLines(const SeriesPromise& promise);
/// The same as a list of objects.
[[nodiscard]] Json promiseJson(const SeriesPromise& promise);

}  // namespace nettare
