#pragma once

#include <vector>

#include "core/nutrition/target.h"

namespace nettare {

/// Whether weighing more of a series brings a figure inside its target.
enum class Enough {
    Already,       ///< the interval keeps to the target as it is
    WithMore,      ///< after EnoughWeighings::more single pieces more
    NoneSuffices,  ///< what else is uncertain, and the scatter of the pieces, are too wide
    ValueMisses,   ///< the value itself does not keep to the target: no weighing mends that
};

/// What one target of a recipe asks of a series that it counts by.
struct EnoughWeighings {
    TargetEntry target{};
    Enough enough = Enough::Already;
    int more = 0;          ///< 1 to kMostMore; 0 unless WithMore
    double room = 0;       ///< from the value to the target, in the component's unit
    double halfWidth = 0;  ///< of the figure now, 95 %
    double least = 0;      ///< that kMostMore weighings, or the rest of the lot, would leave
};
inline constexpr int kMostMore = 1000;

/// For every target of the main recipe whose figure gets narrower with more readings of the series;
/// in the targets' order. Found by weighing so many more on a copy, pieces that keep its mean and
/// spread (tryMoreOf()); the value stays where it is. Of pieces among those that are used no more
/// are weighed than there are. Fails as cook() and figuresPer().
[[nodiscard]] Result<std::vector<EnoughWeighings>> enoughWeighings(const Dossier& dossier,
                                                                   const Cooked& cooked,
                                                                   std::size_t series);

}  // namespace nettare
