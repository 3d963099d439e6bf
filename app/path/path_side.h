#pragma once

#include <QScrollArea>

#include "core/nutrition/budget_share.h"

namespace nettare {

class ShareBars;
class SideCard;
class SimulationCard;

/// The column beside the path: what makes it unsure, what to weigh next, and the check by
/// simulation.
class PathSide : public QScrollArea {
    Q_OBJECT

public:
    explicit PathSide(QWidget* parent = nullptr);

    /// `plusMinus` as printed, "± 5"; empty for figures that are known in part.
    void showShares(const QString& plusMinus, const std::vector<BudgetShare>& shares);
    /// While what comes next is being tried out.
    void showTrying();
    /// `act` is empty where nothing is worth doing.
    void showNext(const QString& act, const QString& outcome);
    [[nodiscard]] SimulationCard& simulation() { return *simulation_; }

private:
    SideCard* sharesCard_;
    ShareBars* shares_;
    SideCard* next_;
    SimulationCard* simulation_;
};

}  // namespace nettare
