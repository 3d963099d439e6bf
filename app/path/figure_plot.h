#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "app/path/path_question.h"
#include "app/session/evaluation.h"
#include "core/nutrition/budget_share.h"
#include "core/publish/path.h"
#include "core/simulation/simulation.h"

namespace nettare {

/// One bar of a plot.
struct PlotBar {
    QString name, text;  ///< "prawns", "60 kcal"
    double value = 0;
};

/// What the plots of a figure show.
struct FigurePlot {
    QString unit;
    int decimals = 0;
    double value = 0;
    std::vector<PlotBar> lines;   ///< what each line brings of the figure, largest first
    std::vector<PlotBar> shares;  ///< of the variance, in percent
    FigureInterval interval;
    std::optional<FigureInterval> simulated;
    std::vector<double> trials;  ///< how many in each of equal bins, 1 for the fullest
    double trialsFrom = 0, trialsTo = 0;
    std::optional<double> ceiling, floor;
    QString intervalText, simulatedText, ceilingText, floorText;
};

/// The lines are those of the path, as printed there, brought to the basis of the figure. Without
/// a simulation there are no trials.
[[nodiscard]] FigurePlot figurePlotOf(PathQuestion question, const Evaluation& evaluation,
                                      const PathStep& path, const std::vector<BudgetShare>& shares,
                                      const Simulation* simulation);

/// A number as a path prints it; nothing where it is none.
[[nodiscard]] std::optional<double> printedNumber(std::string text);

}  // namespace nettare
