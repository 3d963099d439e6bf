#pragma once

#include <QString>

#include "core/ledger/bench_equipment.h"

namespace nettare {

/// "0.1 g steps, up to 3000 g".
[[nodiscard]] QString scaleText(const KnownScale& scale);

/// "Good: showed 200.0 g for 200 g, 23 May 2026, 17:51"; "Never checked with a known mass".
[[nodiscard]] QString checkText(const KnownScale& scale);

/// What a failed check means, and what to do; empty where the last one was good or there is none.
[[nodiscard]] QString failedCheckText(const KnownScale& scale);

/// "212.2 g, weighed 23 May 2026, 17:40 on counter".
[[nodiscard]] QString vesselText(const KnownVessel& vessel);

/// "23 May 2026, 17:51", at the clock of where it was written; in the way of the user's country.
[[nodiscard]] QString momentText(const std::string& at);

}  // namespace nettare
