#pragma once

#include "core/recipe/recipe_document.h"
#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

/// Reads the shape of a recipe document: kinds, words, forms of text and numbers, sizes, unknown
/// and missing members; accepts exactly what resources/schema/recipe.schema.json accepts.
/// References and amounts are resolved later, by makeDossier(). The error carries a JSON pointer.
[[nodiscard]] Result<RecipeDocument> readRecipe(const Json& json);

/// Parses the text first: any error of parseJson or of the above.
[[nodiscard]] Result<RecipeDocument> readRecipeText(std::string_view text);

/// The form that this program writes and the newest that it reads.
inline constexpr std::string_view kRecipeFormat = "nettare recipe";
inline constexpr int kRecipeVersion = 1;

/// Longest texts, in code points, and most entries of each list.
inline constexpr std::size_t kNameLength = 200;
inline constexpr std::size_t kProseLength = 4000;
inline constexpr std::size_t kAmountLength = 40;
inline constexpr std::size_t kMostEntries = 500;

}  // namespace nettare
