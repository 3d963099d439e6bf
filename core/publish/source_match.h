#pragma once

#include <set>
#include <string>

#include "core/publish/compared_state.h"

namespace nettare {

/// What is known of the batches of two states.
enum class Batches {
    ByWeighings,  ///< one where what was weighed of one is among what was weighed of the other
    One           ///< one in any case: an amount is tried
};

/// Which sources of two states are one. They are where nameOf() calls them the same and rest on the
/// same fact: an indication that showed the same, a food of the same value, an amount written
/// alike, a series of which one side's readings are among the other's. How pieces scatter is
/// another matter in every batch; only two records of one batch share it. The share of one piece is
/// shared only where an amount is tried, since else it is of another piece.
class SourceMatch {
public:
    /// Both must outlive this.
    SourceMatch(const ComparedState& before, const ComparedState& after, Batches batches);

    /// Sources of the two sides are one where this is equal.
    [[nodiscard]] std::string nameOf(const Source& source, bool isAfter) const;

private:
    const ComparedState& before_;
    const ComparedState& after_;
    Batches batches_;
    bool sameBatch_;
    std::set<std::string> sharedSeries_;
};

}  // namespace nettare
