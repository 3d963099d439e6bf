#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/ledger/ledger_entry.h"
#include "core/ledger/sayings.h"
#include "core/ledger/scale_checks.h"

namespace nettare {

/// A ledger as CSV (RFC 4180): UTF-8, a header row, records that end with CR LF, decimals with a
/// point. A text that a spreadsheet would take for a formula gets an apostrophe in front (common
/// practice against "CSV injection", OWASP, from memory).
///
/// In a row, net = gross - tare, or jar before - gross where the jar was weighed before and after;
/// "reason" is why an entry does not count, or of an entry that speaks of another one, why.
///
/// Goes over the ledger twice, since what an entry is worth is said after it: every entry is handed
/// to survey() first, and again, in the same order, to row(). Memory grows with the entries that
/// speak of others or are others' tares, about 60 bytes for a tare; never with the texts.
class LedgerCsv {
public:
    /// The header row.
    [[nodiscard]] static std::string header();

    void survey(const ChainedEntry& chained);
    /// The row of an entry, with its CR LF. All entries were surveyed.
    [[nodiscard]] std::string row(const ChainedEntry& chained);

private:
    /// 128 bits of a UUID.
    struct Uuid {
        std::uint64_t high = 0, low = 0;
        friend bool operator==(const Uuid&, const Uuid&) = default;
    };
    struct UuidHash {
        std::size_t operator()(const Uuid& id) const {
            return std::hash<std::uint64_t>{}(id.high ^ (id.low * 0x9E3779B97F4A7C15U));
        }
    };
    /// What an entry showed that is another one's tare; known once its own row is written.
    struct TareShown {
        Decimal shown;
        std::uint8_t unit = 0;  ///< place in units_, from 1
        bool suspect = false;
    };

    /// The numbers of a row that two entries may give.
    struct RowNumbers {
        std::optional<Decimal> gross, tare, jarBefore, net;
    };

    [[nodiscard]] static Uuid uuidOf(std::string_view id);
    [[nodiscard]] std::uint8_t unitOf(const std::string& symbol);
    /// What the tare of an entry, or the jar before, showed; null where it is not known.
    [[nodiscard]] const TareShown* tareOf(const LedgerEntry& entry) const;
    [[nodiscard]] RowNumbers numbersOf(const LedgerEntry& entry, const TareShown* other);

    Sayings sayings_;
    std::vector<ChainedEntry> checks_;  ///< and what speaks of them
    std::optional<ScaleChecks> scales_;
    std::vector<std::string> units_;
    std::unordered_map<Uuid, TareShown, UuidHash> tares_;
};

}  // namespace nettare
