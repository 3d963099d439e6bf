#pragma once

#include <QString>

#include <string_view>
#include <vector>

#include "app/session/evaluation.h"
#include "core/edit/heading_edits.h"

namespace nettare {

/// In the order in which they are shown.
[[nodiscard]] std::vector<Assumption> allAssumptions();
/// Its key in documents.
[[nodiscard]] std::string_view assumptionKey(Assumption which);
/// Nothing where the table itself says it.
[[nodiscard]] std::optional<Decimal> defaultOf(Assumption which);
/// A share of one, shown in percent; else a plain number.
[[nodiscard]] bool isShare(Assumption which);
/// "Spread of single pieces"
[[nodiscard]] QString assumptionName(Assumption which);
/// Where its default comes from.
[[nodiscard]] QString assumptionSource(Assumption which);
/// "Counts now for garlic, fennel."; empty where it counts for nothing, or for all alike.
[[nodiscard]] QString countsFor(Assumption which, const Evaluation& evaluation);

}  // namespace nettare
