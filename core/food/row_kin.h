#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// The words that say what thing a row of a table is of, in the singular and in order: "onion" of
/// "onion, raw" and of "Onions, cooked, boiled", "shrimp" of "Crustaceans, shrimp, mixed species,
/// raw". Published names begin with the thing, or with its kind.
[[nodiscard]] std::vector<std::string> thingOf(std::string_view rowName);

/// Whether a cook who says the one could mean the other: rows of one thing, whatever was done to
/// it.
[[nodiscard]] bool isSameThing(std::string_view rowName, std::string_view otherName);

/// What was done to the food of a row, as its name tells.
enum class Treatment {
    Raw,
    Cooked,
    Dried,
    Drained,
    Canned,
    Frozen,
    Salted,     ///< "with salt", "salted"
    Unsalted,   ///< "without salt", "unsalted", "no salt added"
    Sweetened,  ///< "in syrup", "sweetened", "sugar added"
    Treated,    ///< brined, cured, smoked, enriched or with a solution added
};

/// In the order of Treatment, each once.
[[nodiscard]] std::vector<Treatment> treatmentsOf(std::string_view rowName);

/// "raw", "with salt"
[[nodiscard]] std::string_view nameOf(Treatment treatment);

}  // namespace nettare
