#pragma once

#include <QMetaType>
#include <QString>

#include "core/ledger/ledger_reading.h"

namespace nettare {

/// A reading as the list of the ledger shows it.
struct LedgerRow {
    QString time, what;
    QString gross, tare, net;  ///< with their unit; tare and net may be empty
    QString became;            ///< "weighed", "tare", "scale checked", "replaced: slip of the hand"
    bool struck = false;       ///< no longer counts at all
    bool counts = false;       ///< a reading that does
};

[[nodiscard]] LedgerRow ledgerRowOf(const LedgerReading& reading);

/// All of it in a sentence, as a screen reader says it.
[[nodiscard]] QString spokenRow(const LedgerRow& row);

/// False for the zero of a scale that was only the tare of a reading: the reading's row has it.
[[nodiscard]] bool hasRow(const LedgerReading& reading);

}  // namespace nettare

Q_DECLARE_METATYPE(nettare::LedgerRow)
