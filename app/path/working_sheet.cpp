#include "app/path/working_sheet.h"

#include "app/path/path_texts.h"
#include "app/path/share_bars.h"
#include "app/widgets/mark.h"

namespace nettare {

namespace {

constexpr std::size_t kMostPrinted = 8;
constexpr double kLeastPrinted = 0.01;

/// Marks on paper, where colour is not to be had.
QString letterOf(const PathStep& step) {
    if (!step.way) return {};
    switch (markOf(*step.way)) {
        case Mark::Weighed:
            return QStringLiteral("W");
        case Mark::Label:
            return QStringLiteral("L");
        case Mark::Table:
        case Mark::Density:
            return QStringLiteral("T");
        case Mark::Assumed:
            return QStringLiteral("A");
        case Mark::None:
        case Mark::NoData:
            break;
    }
    return {};
}

void addSteps(std::vector<SheetStep>& steps, const PathStep& step, int depth) {
    SheetStep printed{depth, letterOf(step),  stepValue(step),
                      {},    stepWords(step), QString::fromStdString(step.more)};
    // What the figure itself is of is the heading.
    if (depth == 0) printed.more.clear();
    if (!step.plusMinus.empty())
        printed.spread = QStringLiteral(" ± ") + QString::fromStdString(step.plusMinus);
    if (printed.value.isEmpty()) printed.value = wordOf(Mark::NoData);
    steps.push_back(std::move(printed));
    for (const PathStep& below : step.below) addSteps(steps, below, depth + 1);
}

}  // namespace

WorkingSheet workingSheetOf(PathQuestion question, const Evaluation& evaluation,
                            const PathStep& path, const std::vector<BudgetShare>& shares) {
    WorkingSheet sheet;
    sheet.figure =
        figureInWords(question.component, *evaluation[question.basis], evaluation.dossier.main());
    addSteps(sheet.steps, path, 0);
    for (const BudgetShare& share : largestShares(shares, kMostPrinted, kLeastPrinted))
        sheet.shares.emplace_back(QString::fromStdString(share.name), shareText(share.share));
    return sheet;
}

}  // namespace nettare
