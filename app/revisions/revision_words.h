#pragma once

#include <QString>

#include <optional>
#include <string>

#include "core/nutrition/target.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// "12 March 2026", in the way of the user's country; empty for no time.
[[nodiscard]] QString revisionDay(const std::string& at);

/// "Revision 4 · 12 March 2026 · “oilier, more garlic”".
[[nodiscard]] QString revisionTitle(const RevisionSummary& revision);

/// "revision 2" for a revision that was not made from the one before it; else empty.
[[nodiscard]] QString parentText(const RevisionSummary& revision);

/// "interval 3 kcal beyond": how far the end that decides lies beyond the target.
[[nodiscard]] QString intervalText(const TargetVerdict& verdict);

/// "met", "missed by 24 kcal", "met by value, interval 3 kcal beyond".
[[nodiscard]] QString verdictText(const TargetVerdict& verdict);

/// "Ceiling 150 kcal a portion", "Floor 12 g in 100 g".
[[nodiscard]] QString targetText(const TargetEntry& target);

}  // namespace nettare
