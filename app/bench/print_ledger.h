#pragma once

#include <QString>

#include <optional>

#include "app/bench/ledger_source.h"
#include "app/work/progress.h"

class QPrinter;

namespace nettare {

/// What was written, or why not; both empty where the work was cancelled.
struct LedgerWritten {
    struct Whole {
        long long entries = 0;
        int pages = 0;  ///< 0 for a file of rows
        std::string head;
        bool checked = false;  ///< the chain was held against its hashes on the way
        long long broken = 0;  ///< the first entry that is not as recorded; 0: none
    };
    std::optional<Whole> whole;
    QString refusal;
};

/// Prints all entries, oldest first; the head says whether their chain is intact and where it
/// ends, each page the number of entries and the head of the ledger. A PDF takes its name only when
/// it is whole. Belongs in a thread beside the window, but for a printer that was made there.
[[nodiscard]] LedgerWritten printLedger(const LedgerSource& ledger, const QString& kitchenName,
                                        const QString& printedAt, QPrinter& printer,
                                        const Progress& progress);

/// Writes all entries as CSV, all or nothing.
[[nodiscard]] LedgerWritten writeLedgerCsv(const LedgerSource& ledger, const QString& path,
                                           const Progress& progress);

}  // namespace nettare
