#pragma once

#include <string>
#include <vector>

#include "core/nutrition/budget_share.h"

namespace nettare {

/// One thing a cook can do to know a figure better.
enum class ActKind {
    WeighLine,     ///< put the line on the scale
    WeighTwoMore,  ///< two more readings of its series, each of as many pieces as its first
    WeighTwo,      ///< two of the pieces of a line that a table's measure counts: a new series
    ReadLabel,     ///< take the food's values from its package
    WeighDish,     ///< the dish after cooking
    WeighPieces,   ///< two (more) finished pieces, for any one piece
    CountPieces,   ///< count what the batch makes
    SayResidue     ///< say what is left over, where its make-up is unknown
};

struct Act {
    ActKind kind = ActKind::WeighLine;
    std::size_t index = 0;  ///< of line, series, food or residue of the main recipe; else 0

    friend bool operator==(const Act&, const Act&) = default;
};

/// What an act would do to the 95 % half-width of a figure, all else as it is.
struct ActOutcome {
    Act act;
    double halfWidth = 0;  ///< expected after it
};

/// What is worth doing next for one figure.
struct NextAct {
    double halfWidth = 0;              ///< now
    std::vector<ActOutcome> outcomes;  ///< every act that is open, the one that helps most first
    std::vector<BudgetShare> shares;   ///< what the half-width is made of now

    /// The first outcome, if it narrows the interval by at least kWorthwhile.
    [[nodiscard]] const ActOutcome* best() const;
};
inline constexpr double kWorthwhile = 0.03;

/// Tries every act on a copy of the dossier, as if it found what is expected now. The scale is that
/// of the series, else the first of the recipe, else one that shows whole grams; a label speaks of
/// a serving of 30 g (common practice) by the US rules of rounding. Fails as figuresPer().
[[nodiscard]] Result<NextAct> nextAct(Component component, Basis basis, const Dossier& dossier,
                                      const Cooked& cooked);

/// "Weigh the prawns": what to do, in plain words.
[[nodiscard]] std::string actText(const Act& act, const Dossier& dossier);
/// What it would bring, or why nothing on a scale helps: "would narrow ± 5.0 kcal to ± 4.8; the
/// label's own rounding is the larger part and no scale can narrow it".
[[nodiscard]] std::string outcomeText(Component component, const NextAct& next);

}  // namespace nettare
