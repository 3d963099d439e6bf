#pragma once

#include <string>
#include <string_view>

#include "core/recipe/recipe_document.h"
#include "core/support/json.h"

namespace nettare {

/// A ceiling on energy as a cook reads and types it.
struct CeilingText {
    std::string number;  ///< empty: none
    Basis per = Basis::Portion;
};

/// The first ceiling on kilocalories of the document.
[[nodiscard]] CeilingText ceilingOf(const Json& document);
/// "150 kcal per skewer"; what it is per is as before where the text does not say.
[[nodiscard]] CeilingText readCeiling(const Json& document, std::string_view typed);
/// "150 kcal", with "per ..." where it is not per portion; empty for none.
[[nodiscard]] std::string ceilingText(const Json& document);

}  // namespace nettare
