#pragma once

#include <vector>

#include "core/nutrition/target.h"

namespace nettare {

/// Whether weighing more of a series brings a figure inside its target.
enum class Enough {
    Already,       ///< the interval keeps to the target as it is
    WithMore,      ///< after EnoughWeighings::more readings more
    NoneSuffices,  ///< not after EnoughWeighings::tried more: what else is uncertain, or the
                   ///< scatter of the pieces, is too wide
    ValueMisses,   ///< the value itself does not keep to the target: no weighing mends that
};

/// What one target of a recipe asks of a series that it counts by.
struct EnoughWeighings {
    TargetEntry target{};
    Enough enough = Enough::Already;
    int more = 0;          ///< 1 to kMostMore; 0 unless WithMore
    double room = 0;       ///< from the value to the target, in the component's unit
    double halfWidth = 0;  ///< of the figure now, 95 %
    int tried = 0;         ///< kMostMore, or what is left of the lot
    double least = 0;      ///< half-width that so many more would leave
};
inline constexpr int kMostMore = 1000;

/// For every target of the main recipe whose figure hangs on the series, in the targets' order.
/// Found by weighing so many more on a copy (tryMoreOf()); the value stays where it is. Of pieces
/// among those that are used no more are weighed than there are. Fails as cook() and figuresPer().
[[nodiscard]] Result<std::vector<EnoughWeighings>> enoughWeighings(const Dossier& dossier,
                                                                   const Cooked& cooked,
                                                                   std::size_t series);

}  // namespace nettare
