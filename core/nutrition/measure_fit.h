#pragma once

#include <vector>

#include "core/recipe/dossier.h"

namespace nettare {

/// The measures of a food's table row that a line may mean.
struct MeasureFit {
    std::vector<std::size_t> measures;  ///< indices; several where the line leaves it open
    bool sizeNotSaid = false;           ///< the line names no size, or one that no measure has
};

/// Those of `candidates` with the size that the line names, else with most words of its
/// preparation, else those that name none, else all. Words match in singular and plural, "sliced"
/// and "slices"; "medium-large" is both. Of several amounts of one measure ("1/2 cup", "1 cup") the
/// one nearest to `asked`, in proportion, is kept, where that is given.
[[nodiscard]] MeasureFit fittingMeasures(const Line& line, const TableFood& food,
                                         std::vector<std::size_t> candidates,
                                         std::optional<double> asked);

// `piece` is a singular and not empty: "egg".

/// True where a measure counts such pieces: "clove".
[[nodiscard]] bool isPiece(const HouseholdMeasure& measure, std::string_view piece);
/// Also where it counts pieces of one size: "large egg".
[[nodiscard]] bool endsInPiece(const HouseholdMeasure& measure, std::string_view piece);

}  // namespace nettare
