#pragma once

#include <string>
#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// A line with another amount: `factor` times what it is, 0 or above.
struct ChangedLine {
    std::size_t line = 0;  ///< of the main recipe
    double factor = 1;
};

/// The dossier with changed amounts (Line::tried), everything else as it is: grams, and their
/// uncertainty, in proportion; what is left over stays what was weighed, and a cooked weight grows
/// by what is added. A line tried with nothing is not there: nothing of it can be left over, so
/// that cook() may answer ResidueTooLarge, or NothingCounted where no line is left.
[[nodiscard]] Dossier withChanges(const Dossier& dossier, const std::vector<ChangedLine>& changes);

/// How an amount was found that meets a ceiling or floor.
struct SolvedAmount {
    double factor = 1;        ///< of the line's amount
    FigureInterval interval;  ///< of the figure with it
};

inline constexpr double kMostTimes = 10;

/// The factor of one line with which the interval of a figure just meets the target, between none
/// and kMostTimes, to four significant digits on the safe side: the largest one for a ceiling, the
/// smallest for a floor. Where more of the line only lowers the end that counts, the one at which
/// that end comes to meet it. `changes` of other lines hold; the factor is of the amount in the
/// dossier. Fails: TargetOutOfReach with "least" and "most", the ends that the figure can have,
/// "unit" and "line"; else, for the amounts as they are, as cook() and figuresPer().
[[nodiscard]] Result<SolvedAmount> solvedAmount(const Dossier& dossier, const TargetEntry& target,
                                                std::size_t line,
                                                const std::vector<ChangedLine>& changes,
                                                Meaning meaning);

}  // namespace nettare
