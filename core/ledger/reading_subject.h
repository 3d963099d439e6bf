#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/ledger/ledger_entry.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// What a recipe document says that one of its readings is of.
struct ReadingSubject {
    std::string what;  ///< food, series or dish; empty where nothing uses the reading
    std::string why;   ///< "weight of the line, for “Skewers”"; may be empty
    std::string row;   ///< TableRow::text() of the food; may be empty
    std::optional<SeriesMark> series;
};

/// A reading that several things use is of the first: a series, a line, the cooked dish, what is
/// not eaten, what is left over. `before` of a ratio is the document's id of the gross before.
[[nodiscard]] ReadingSubject subjectOf(const RecipeDocument& document, std::string_view reading);

}  // namespace nettare
