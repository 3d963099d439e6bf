#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/ledger_entry.h"
#include "core/ledger/scale_checks.h"

namespace nettare {

/// A food as series compare it: ASCII letters in lower case; "Ähre" and "ähre" stay two foods.
[[nodiscard]] std::string foldedWhat(std::string_view what);

/// What makes a yield series: food, kind and what is counted. Two keys are of one series where
/// sameSeries() says so; == compares the letters.
struct SeriesKey {
    std::string what;  ///< as the cook wrote it
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;

    friend bool operator==(const SeriesKey&, const SeriesKey&) = default;
    friend auto operator<=>(const SeriesKey&, const SeriesKey&) = default;
};

/// Same kind, same count, and the same food by foldedWhat().
[[nodiscard]] bool sameSeries(const SeriesKey& a, const SeriesKey& b);

/// The series that a shown entry belongs to; nothing where to none. Of a ratio it is the entry that
/// names the reading before it.
[[nodiscard]] std::optional<SeriesKey> seriesKeyOf(const LedgerEntry& entry);

/// An indication with what the ledger says of it since: the row of the ledger that a cook sees.
struct LedgerReading {
    ChainedEntry chained;         ///< of the kinds Shown, Checked, Vessel
    std::optional<Decimal> tare;  ///< in the entry's unit; nothing where it has none
    /// Shown less tare (or what the jar showed before less shown), exactly; nothing where the entry
    /// is no reading: a tare, a check, an empty vessel; or where the tare was in another unit.
    std::optional<Decimal> net;
    /// d of what showed the tare, in the entry's unit; the entry's own where only the tare is told.
    std::optional<Decimal> tareReadability;
    /// Net of the reading that a ratio's reading names, or of its successor, in the entry's unit;
    /// nothing where that one was taken back.
    std::optional<Decimal> before;
    double roundingBeforeGrams = 0;  ///< roundingGrams() of the reading that `before` is of
    std::string supersededBy;        ///< UUID; empty while it counts
    std::string successor;           ///< UUID of the shown entry that took its place; may be empty
    std::string reason;      ///< why superseded or left out, as last said; empty while it counts
    bool leftOut = false;    ///< of its series, with `reason`
    bool asWeighed = false;  ///< counts, odd or not: the cook said that it is as weighed
    bool suspect =
        false;  ///< a check doubts its scale, that of its tare, or of what a ratio was before
    bool usedAsTare = false;  ///< another entry's tare, or the jar before
    /// Its tare, or what the jar showed before, was taken back since; the net stays as recorded.
    bool tareOverruled = false;
    std::string tareReason;  ///< why; empty while it stands
    /// What its ratio names as before was taken back, and nothing stands in its place.
    bool beforeOverruled = false;
    std::string beforeReason;  ///< why; empty while it stands

    [[nodiscard]] const LedgerEntry& entry() const { return chained.entry; }
    /// Neither superseded nor left out of its series.
    [[nodiscard]] bool counts() const { return supersededBy.empty() && !leftOut; }
    /// Counts, and has the numbers that it counts with: its net, and of a ratio what went in.
    [[nodiscard]] bool countsInSeries() const {
        const bool ratio = entry().series && entry().series->kind == SeriesKind::Ratio;
        return counts() && net && (before || !ratio);
    }
};

/// The indications among `entries` in their order, each with what the others say of it. `entries`
/// are of one chain, by sequence; the tares they refer to should be among them, and what is not
/// leaves a net unknown. A reason may be given anew (Reasoned) by the id of the reading or of the
/// entry that gave the old one; taking in likewise. Of two that supersede, the first counts.
/// `checks` are those of all the ledger.
[[nodiscard]] std::vector<LedgerReading> readingsOf(std::vector<ChainedEntry> entries,
                                                    const ScaleChecks& checks);

/// A net in grams; nothing where there is none.
[[nodiscard]] std::optional<double> netGrams(const LedgerReading& reading);

/// Standard uncertainty of a net from rounding alone, in grams: d/sqrt(12) for each of its two
/// indications (JCGM 100:2008, 4.3.7), in quadrature; of an indication without a tare, its own.
[[nodiscard]] double roundingGrams(const LedgerReading& reading);

}  // namespace nettare
