#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/decimal.h"
#include "core/support/json.h"
#include "core/support/result.h"
#include "core/weighing/indication.h"
#include "core/weighing/series.h"

namespace nettare {

/// What a ledger entry says.
enum class EntryKind {
    Shown,       ///< what a scale showed once
    Superseded,  ///< an earlier entry no longer counts; the reason is given
    LeftOut,     ///< an earlier entry stays, but no series counts it; the cause is given
    TakenIn,     ///< one that was left out counts again; of one that counts: it is as weighed
    Reasoned,    ///< an entry of the two kinds before Shown's got another reason
    Scale,       ///< a scale of the kitchen, or what is known of it now
    Checked,     ///< a scale showed that for a known mass
    Vessel,      ///< an empty vessel with its tare, from now on
};

/// Where the number came from.
enum class EntryOrigin { Typed, Device, Document };

/// The yield series that a reading belongs to. Food, kind and what is counted make the series
/// (SeriesKey); tags split it: "size 16/20", "with head".
struct SeriesMark {
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;                 ///< piece word or unit symbol; of ratios "edible / bought"
    std::vector<std::string> tags;  ///< conditions, sorted, each once; at most kMostTags
    std::string before;             ///< of ratios: UUID of the reading before trimming, cooking ...

    friend bool operator==(const SeriesMark&, const SeriesMark&) = default;
};

/// One entry of the ledger: an indication with everything needed to defend it. Never edited; a
/// correction is a new entry that names the old one and why. Members that a kind does not have are
/// left out of its JSON form: Superseded, LeftOut, TakenIn and Reasoned have refersTo and reason
/// alone; Scale has scale, unit, readability and capacity; Checked has scale, unit, readability,
/// shown and mass; Vessel has vessel, scale, unit, readability and shown, its tare.
struct LedgerEntry {
    EntryKind kind = EntryKind::Shown;
    EntryOrigin origin = EntryOrigin::Typed;
    std::string id;             ///< UUID, RFC 4122 lower case
    std::string at;             ///< UTC time with offset, ISO 8601
    std::string recipe;         ///< id of the recipe it was weighed for; may be empty
    std::string indication;     ///< id of the indication in that recipe's document
    Decimal shown;              ///< as the scale showed it
    std::string unit;           ///< symbol of a mass unit
    Decimal readability;        ///< d, in that unit
    std::string scale, vessel;  ///< names; the vessel may be empty
    WeighedState state = WeighedState::EdiblePortion;
    int pieces = 1;        ///< weighed together; 1 to 9999
    std::string refersTo;  ///< UUID of the entry that this one speaks of
    std::string reason;    ///< why; given where refersTo is
    // What it is a reading of. The net is computed, never stored: shown less tare.
    std::string what;  ///< food or thing, as the cook calls it: "prawn meat"; may be empty
    std::string why;   ///< what for: "edible portion per piece, for “Skewers”"; may be empty
    std::string row;   ///< TableRow::text() of the food; may be empty
    /// UUID of the entry that showed the tare: the empty vessel, or the bowl before the addition.
    std::string tare;
    /// UUID of what the jar showed before: the net is that less this.
    std::string takenFrom;
    /// Known tare of `vessel`, in `unit`; without `tare` its rounding counts as of this scale.
    std::optional<Decimal> vesselTare;
    std::optional<SeriesMark> series;
    // Of scales
    std::optional<Decimal> capacity;  ///< most it takes, in `unit`
    Decimal mass;                     ///< known mass it was checked with, in `unit`
};

/// An entry at its place in the chain: hash = SHA-256 of the canonical JSON of the entry with its
/// sequence and the hash before it.
struct ChainedEntry {
    LedgerEntry entry;
    long long sequence = 0;  ///< 1, 2, 3 ...
    std::string previous;    ///< hash of the entry before; empty for the first
    std::string hash;
};

/// The canonical JSON that is hashed and stored; members that are empty are left out.
[[nodiscard]] Json entryJson(const LedgerEntry& entry, long long sequence,
                             const std::string& previous);
/// Reads it back, without a hash; an entry that it accepts writes to the same bytes again, where
/// its decimals are written as Decimal writes them. Fails like readRecipe() does; TagsNotSorted.
[[nodiscard]] Result<ChainedEntry> readEntry(const Json& json);

}  // namespace nettare
