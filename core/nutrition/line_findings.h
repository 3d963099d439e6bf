#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/food/refuse_doubt.h"
#include "core/nutrition/way_to_grams.h"

namespace nettare {

/// What whoever defends a figure is asked about a line.
enum class LineFindingKind {
    WaysDisagree,        ///< an open way lies further off than both uncertainties explain
    StateMismatch,       ///< what was weighed is not in the state of the food's values
    PreparedNotSaid,     ///< the label speaks of it prepared; nothing says what was weighed
    MeasuresDoNotScale,  ///< the table's measures of this food contradict each other
    RefuseDoubtful,      ///< the table's refuse is not what a kitchen takes off
    BetterWayOpen,       ///< the cook chose a way that is worse than one open
    SizeNotSaid,         ///< the size said, or none, picks no single measure
    SmallReading,        ///< a net under 20 steps of its scale
};

/// One finding with its numbers; findingSentence() says it. Members are set where the kind has
/// them.
struct LineFinding {
    LineFindingKind kind = LineFindingKind::WaysDisagree;
    std::optional<Way> better;       ///< open, and without this finding
    std::optional<std::size_t> way;  ///< in LineGrams::ways: the other way
    double relative = 0;  ///< WaysDisagree: (other - chosen) / chosen. SmallReading: of the net
    std::optional<FoodState> weighed, row;                        ///< of StateMismatch
    std::optional<std::pair<std::size_t, std::size_t>> measures;  ///< of the food's table row
    std::optional<RefuseDoubt> doubt;
    std::optional<std::size_t> reading;  ///< of the dossier
};

/// The findings on one line of a food, in the order of their kinds. `grams` is what waysToGrams()
/// answered for that line.
[[nodiscard]] std::vector<LineFinding> findingsOf(const Dossier& dossier, std::size_t recipe,
                                                  std::size_t line, const LineGrams& grams);

}  // namespace nettare
