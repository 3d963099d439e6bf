#pragma once

#include <string>
#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// What in a kitchen can be done about a part of an uncertainty.
enum class ShareKind {
    Weighing,    ///< readings: rounding, calibration, a vessel's tare
    Series,      ///< the cook's own series, mean and scatter
    Label,       ///< a label's rounding, of serving and amount
    Table,       ///< a table's value of a food
    Measure,     ///< a table's measure, or a density
    Stated,      ///< values the cook stated
    Assumption,  ///< what was assumed or left open: amounts, sizes, pinches, ranges
    Share        ///< what one piece gets of the batch
};

/// Sources that a cook knows as one thing, with their part of the variance of a figure.
struct BudgetShare {
    ShareKind kind = ShareKind::Weighing;
    std::string name;  ///< "olive oil, label energy and serving"
    double share = 0;  ///< of u^2, 0 to 1
    std::vector<Contribution> parts;
};

/// All shares of a figure, largest first; they sum to 1 where u is not zero.
[[nodiscard]] std::vector<BudgetShare> budgetShares(Component component, const Figures& figures,
                                                    const Dossier& dossier, const Cooked& cooked);

/// The largest shares with everything that is smaller than `least`, or beyond `most` rows, as one
/// last "everything else".
[[nodiscard]] std::vector<BudgetShare> largestShares(std::vector<BudgetShare> shares,
                                                     std::size_t most, double least);

}  // namespace nettare
