#pragma once

#include <QString>

#include <vector>

#include "app/path/path_question.h"
#include "app/session/evaluation.h"
#include "core/nutrition/budget_share.h"
#include "core/publish/path.h"

class QPrinter;

namespace nettare {

/// One step as the working sheet prints it.
struct SheetStep {
    int depth = 0;  ///< 0 for the figure
    QString mark;   ///< "W", "L", "T", "A"; empty for what was computed
    QString value, spread, words, more;
};

/// What the working sheet of one figure says, on paper.
struct WorkingSheet {
    QString title, state;
    QString ledgerHead;  ///< hash of the ledger's newest entry; empty where there is none
    long long ledgerEntries = 0;
    QString figure;  ///< "energy per portion of 2 skewers, this batch"
    std::vector<SheetStep> steps;
    std::vector<std::pair<QString, QString>> shares;  ///< name, percent
    QString next, nextOutcome;                        ///< empty: not known
    QString simulation;                               ///< empty: none was run
};

/// Path and shares; title, state and the rest are the caller's.
[[nodiscard]] WorkingSheet workingSheetOf(PathQuestion question, const Evaluation& evaluation,
                                          const PathStep& path,
                                          const std::vector<BudgetShare>& shares);

/// Prints it on the paper of the printer; false where that takes nothing.
bool printWorkingSheet(const WorkingSheet& sheet, QPrinter& printer);

}  // namespace nettare
