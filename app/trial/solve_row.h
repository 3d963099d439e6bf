#pragma once

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "app/trial/trial.h"

namespace nettare {

/// "Change [line] until [limit] is met": finds the one amount.
class SolveRow : public QWidget {
    Q_OBJECT

public:
    explicit SolveRow(QWidget* parent = nullptr);

    /// Offers the lines and limits of the draft; the chosen ones stay where they are there still.
    void offer(const Evaluation& evaluation);

signals:
    void asked(std::size_t line, const nettare::TargetEntry& target);

private:
    QComboBox *line_, *target_;
    QPushButton* find_;
    QLabel* none_;
    std::vector<std::size_t> lines_;
    std::vector<TargetEntry> targets_;
};

/// "at most 150 kcal per portion of 2 skewers", with the component where the unit does not say it.
[[nodiscard]] QString limitWords(const TargetEntry& target, const Recipe& recipe);

}  // namespace nettare
