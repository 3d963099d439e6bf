#pragma once

#include <optional>
#include <string>

#include "core/quantity/decimal.h"
#include "core/support/json.h"
#include "core/support/result.h"
#include "core/weighing/indication.h"

namespace nettare {

/// What a ledger entry says.
enum class EntryKind {
    Shown,       ///< what a scale showed once
    Superseded,  ///< an earlier entry no longer counts; the reason is given
};

/// Where the number came from.
enum class EntryOrigin { Typed, Device, Document };

/// One entry of the ledger: an indication with everything needed to defend it. Never edited; a
/// correction is a new entry that names the old one and why. An entry that only supersedes has
/// none of the members from `indication` to `pieces`: its JSON form leaves them out.
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
    std::string refersTo;  ///< UUID of the superseded entry
    std::string reason;    ///< why it was superseded; given where refersTo is
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
/// its decimals are written as Decimal writes them. Fails like readRecipe() does.
[[nodiscard]] Result<ChainedEntry> readEntry(const Json& json);

}  // namespace nettare
