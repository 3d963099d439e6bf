#pragma once

#include <QString>

#include "app/paper/paper_block.h"
#include "core/ledger/ledger_walk.h"

namespace nettare {

/// One entry as the printed ledger has it.
struct LedgerLine {
    QString number, id;        ///< its place in the chain; how its UUID begins
    QString time;              ///< as the entry has it, to the second, with its offset
    QString what;              ///< "prawn meat, 6 pieces", "scale “counter”"
    QString note;              ///< what became of it and why, its scale, its series
    QString gross, tare, net;  ///< empty where it has none
    QString unit;
    bool struck = false;  ///< superseded: still legible, through a line
};

[[nodiscard]] LedgerLine ledgerLineOf(const ChainedEntry& chained, const WalkedEntry& walked);

/// The names of the columns, for the top of every page.
[[nodiscard]] PaperBlock ledgerHeader(double widthCpt);

[[nodiscard]] PaperBlock ledgerBlock(const LedgerLine& line, double widthCpt);

}  // namespace nettare
