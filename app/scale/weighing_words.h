#pragma once

#include <QString>

#include <optional>

#include "app/scale/weighing.h"

namespace nettare {

/// Why a weighing cannot be recorded for that purpose; empty where it can.
[[nodiscard]] QString weighingRefusal(const Weighing& weighing, PurposeKind purpose);

/// What the rounding of the scale means for a small net; empty from 20 steps on.
[[nodiscard]] QString coarseCaution(const Weighing& weighing);

/// Where a piece would weigh less than half or more than twice what one weighed before: most often
/// the pieces were not counted. Empty where it does not.
[[nodiscard]] QString countCaution(const Weighing& weighing, std::optional<double> gramsEachBefore);

/// "58.9 g"
[[nodiscard]] QString massText(Decimal shown, const ScaleEntry& scale);

/// "zeroed", "steel bowl, 212.2 g", "as shown, 340 g"
[[nodiscard]] QString tareText(const Tare& tare, const ScaleEntry& scale);

}  // namespace nettare
