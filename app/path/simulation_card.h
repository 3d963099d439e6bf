#pragma once

#include "app/path/side_card.h"

#include <cstdint>

class QPushButton;

namespace nettare {

class ProgressLine;

/// "Checked another way": offers a simulation, shows how far it is, and what it said.
class SimulationCard : public SideCard {
    Q_OBJECT

public:
    explicit SimulationCard(QWidget* parent = nullptr);

    /// How many a run draws, for its button.
    void setTrials(std::uint64_t trials);
    /// Offers to run; `note` is what stands above the button.
    void offer(const QString& note);
    void showRunning(const QString& note);
    /// 0 to 1.
    void setProgress(double share);
    void showResult(const QString& text);
    [[nodiscard]] bool isRunning() const { return running_; }

signals:
    void runWanted();
    void cancelWanted();

private:
    void setRunning(bool running);

    ProgressLine* progress_;
    QPushButton* button_;
    std::uint64_t trials_;
    bool running_ = false;
};

}  // namespace nettare
