#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// A check of a scale with a known mass.
struct ScaleCheck {
    std::string at;
    long long sequence = 0;
    Decimal mass, shown;
    std::string unit;  ///< of both; the scale's own may be another since
    bool good = false;
};

/// A scale as the ledger last speaks of it.
struct KnownScale {
    std::string name;
    std::string unit;
    Decimal readability;
    std::optional<Decimal> capacity;
    std::optional<ScaleCheck> lastCheck;
};

/// An empty vessel as it was last weighed.
struct KnownVessel {
    std::string name;
    std::string scale, unit;
    Decimal tare, readability;
    std::string at, entry;  ///< when, and the UUID of the entry
};

struct BenchEquipment {
    std::vector<KnownScale> scales;    ///< that was used last, first
    std::vector<KnownVessel> vessels;  ///< by name
};

/// Scales and vessels from the entries Scale, Checked and Vessel, by sequence. A scale that only
/// a check or a reading names is there as well. What an entry Superseded among them speaks of does
/// not count: a check that was mistyped, a vessel that is gone.
[[nodiscard]] BenchEquipment equipmentOf(const std::vector<ChainedEntry>& entries);

/// The UUID of the newest entry among `entries`, by sequence, that weighed the vessel of `weighed`
/// empty on that scale (its name, unit and readability) with that tare; empty where none stands.
[[nodiscard]] std::string vesselEntryOf(const std::vector<ChainedEntry>& entries,
                                        const LedgerEntry& weighed);

/// Whether a scale that shows `shown` for `mass` is within what is allowed in service: 1 d up to
/// 500 d, 2 d up to 2,000 d, 3 d above; twice the errors allowed at first for class III, with e = d
/// (OIML R 76-1:2006, 3.5.1 and 3.5.2, from memory).
[[nodiscard]] bool isGoodCheck(Decimal mass, Decimal shown, Decimal readability);

/// Whether what that scale showed at that place of the chain is in doubt: the first check of it
/// after that place failed, or the last one before it did. `checks` by sequence.
[[nodiscard]] bool isSuspect(const std::vector<ChainedEntry>& checks, const std::string& scale,
                             long long sequence);

}  // namespace nettare
