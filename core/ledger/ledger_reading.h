#pragma once

#include <compare>
#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// What makes a yield series: food, kind and what is counted. Foods are compared as cooks write
/// them, without regard to letter case.
struct SeriesKey {
    std::string what;
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;

    friend bool operator==(const SeriesKey&, const SeriesKey&) = default;
    friend auto operator<=>(const SeriesKey&, const SeriesKey&) = default;
};

/// The series that a shown entry belongs to; nothing where to none.
[[nodiscard]] std::optional<SeriesKey> seriesKeyOf(const LedgerEntry& entry);

/// An indication with what the ledger says of it since: the row of the ledger that a cook sees.
struct LedgerReading {
    ChainedEntry chained;         ///< of the kinds Shown, Checked, Vessel
    std::optional<Decimal> tare;  ///< in the entry's unit; nothing where it has none
    /// Shown less tare (or what the jar showed before less shown), exactly; nothing where the entry
    /// is no reading: a tare, a check, an empty vessel.
    std::optional<Decimal> net;
    std::optional<Decimal> before;  ///< net of the reading that a ratio's reading names
    std::string supersededBy;       ///< UUID; empty while it counts
    std::string successor;          ///< UUID of the shown entry that took its place; may be empty
    std::string reason;       ///< why superseded or left out, as last said; empty while it counts
    bool leftOut = false;     ///< of its series, with `reason`
    bool suspect = false;     ///< between a good check of its scale and one that failed
    bool usedAsTare = false;  ///< another entry's tare

    [[nodiscard]] const LedgerEntry& entry() const { return chained.entry; }
    /// Counts in a series: neither superseded nor left out.
    [[nodiscard]] bool counts() const { return supersededBy.empty() && !leftOut; }
};

/// The indications among `entries` in their order, each with what the others say of it. `entries`
/// are of one chain, by sequence; the tares they refer to should be among them, and what is not
/// leaves a net unknown. `checks` are the scales' checks (all of the ledger), by sequence.
[[nodiscard]] std::vector<LedgerReading> readingsOf(const std::vector<ChainedEntry>& entries,
                                                    const std::vector<ChainedEntry>& checks);

/// A net in grams; nothing where there is none.
[[nodiscard]] std::optional<double> netGrams(const LedgerReading& reading);

/// Standard uncertainty of a net from rounding alone, in grams: d/sqrt(12) for each of its two
/// indications (JCGM 100:2008, 4.3.7), in quadrature.
[[nodiscard]] double roundingGrams(const LedgerReading& reading);

}  // namespace nettare
