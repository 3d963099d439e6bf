#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QScrollArea>
#include <QVBoxLayout>

#include <vector>

#include "app/scale/left_over.h"

namespace nettare {

/// The lines of a mixture, to be ticked: all at once those that a step names, or one by one.
class MixturePanel : public QWidget {
    Q_OBJECT

public:
    explicit MixturePanel(QWidget* parent = nullptr);

    /// Shows the document's lines, with those of the mixture ticked.
    void setMixture(const Json& document, const LeftOver& left);
    [[nodiscard]] std::vector<std::string> lines() const;
    /// Number of the step at which they were mixed, from 1.
    [[nodiscard]] std::optional<int> mixedAt() const;

signals:
    void changed();

private:
    void fillSteps(const Json& document, std::optional<int> mixedAt);
    void fillLines(const Json& document, const std::vector<std::string>& ticked);
    void tickStep();

    /// What the box of steps offers.
    struct StepChoice {
        int number;  ///< 0: ticked by hand
        std::vector<std::string> lines;
    };
    struct TickedLine {
        std::string id;
        QCheckBox* box;
    };
    QComboBox* step_;
    QWidget* list_;
    QVBoxLayout* rows_;
    QScrollArea* scroll_;
    std::vector<StepChoice> steps_;
    std::vector<TickedLine> lines_;
};

}  // namespace nettare
