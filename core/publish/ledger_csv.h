#pragma once

#include <string>

#include "core/ledger/ledger_walk.h"

namespace nettare {

/// A ledger as CSV (RFC 4180): UTF-8, a header row, records that end with CR LF, decimals with a
/// point. A text that a spreadsheet would take for a formula gets an apostrophe in front (common
/// practice against "CSV injection", OWASP, from memory).
///
/// In a row, net = gross - tare, or jar before - gross where the jar was weighed before and after;
/// "reason" is why an entry does not count, or of an entry that speaks of another one, why; "tare
/// taken back" and "before taken back" are why its tare, or the jar before, and a ratio's reading
/// before no longer stand.
///
/// Goes over the ledger twice, as LedgerWalk does: every entry is handed to survey() first, and
/// again, in the same order, to row().
class LedgerCsv {
public:
    /// The header row.
    [[nodiscard]] static std::string header();

    void survey(const ChainedEntry& chained) { walk_.survey(chained); }
    /// The row of an entry, with its CR LF. All entries were surveyed.
    [[nodiscard]] std::string row(const ChainedEntry& chained);

private:
    LedgerWalk walk_;
};

}  // namespace nettare
