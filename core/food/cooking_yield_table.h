#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"

namespace nettare {

// USDA Table of Cooking Yields for Meat and Poultry, Release 2 (September 2014), which the program
// carries: 173 rows. What the published sheet leaves open is unknown, never 0.

/// What a cut weighs after cooking. All percents are of its raw weight. The published spread is not
/// always that of n samples: nine rows have a range that so few with that standard deviation cannot
/// reach.
struct CookingYield {
    int sheetRow = 0;                       ///< in the published sheet, from 2: names the row
    std::string foodGroup;                  ///< four digits, a food group of USDA SR: "1300"
    std::optional<std::string> foodNumber;  ///< five digits, in USDA SR, as a rule the cooked food
    std::string description;                ///< as published
    std::string method;                     ///< as published: "Broiled or Grilled"
    double yieldPercent = 0;
    std::optional<int> n;  ///< samples, at least 1
    std::optional<double> standardDeviationPercent;
    std::optional<double> leastPercent, mostPercent;  ///< of the samples
    std::optional<double> moistureChangePercent;      ///< negative where moisture is lost
    std::optional<double> fatChangePercent;           ///< positive where fat is taken up
    int releaseYear = 0;

    /// By the sheet's own note, rows of 1975 come from Agriculture Handbook 102: far older cuts and
    /// birds, 16 rows.
    [[nodiscard]] bool isOfHandbook102() const { return releaseYear == 1975; }
};

/// Cooking yields by their row in the published sheet.
class CookingYieldTable {
public:
    CookingYieldTable() = default;
    /// Reads the form of resources/yields/cooking_yields.txt: sheet rows rising, "-" for a gap.
    /// WrongFormat otherwise, with the line, "expected" and "found".
    [[nodiscard]] static Result<CookingYieldTable> read(std::string_view text);

    /// All rows, in the order of the sheet.
    [[nodiscard]] const std::vector<CookingYield>& all() const { return yields_; }
    /// That row of the sheet; null if there is none.
    [[nodiscard]] const CookingYield* atSheetRow(int sheetRow) const;

private:
    std::vector<CookingYield> yields_;
};

/// The published table, read at its first use. Were its text broken, which tests refuse, it would
/// have no rows.
[[nodiscard]] const CookingYieldTable& cookingYieldTable();

}  // namespace nettare
