#pragma once

#include <set>
#include <string>

#include "core/publish/compared_state.h"

namespace nettare {

/// Which sources of two states are one. They are where nameOf() calls them the same and rest on the
/// same fact: an indication that showed the same, a food of the same value, an amount written
/// alike, a series of which one side's readings are among the other's. How pieces scatter is
/// another matter in every batch; only two records of one batch share it. The share of one piece is
/// never shared, since it may be another piece.
class SourceMatch {
public:
    /// Both must outlive this.
    SourceMatch(const ComparedState& before, const ComparedState& after);

    /// Sources of the two sides are one where this is equal.
    [[nodiscard]] std::string nameOf(const Source& source, bool isAfter) const;
    [[nodiscard]] bool sameBatch() const { return sameBatch_; }

private:
    const ComparedState& before_;
    const ComparedState& after_;
    bool sameBatch_;
    std::set<std::string> sharedSeries_;
};

}  // namespace nettare
