#pragma once

#include <QFrame>

#include <optional>

#include "core/label/check_label.h"

class QLabel;
class QPushButton;

namespace nettare {

/// What a label that is being typed cannot all mean, one finding at a time: what is odd, what was
/// likely meant, and that it is as printed. Hidden where there is none.
class LabelFindingBar : public QFrame {
    Q_OBJECT

public:
    explicit LabelFindingBar(QWidget* parent = nullptr);

    /// Shows the first of these and says how many there are.
    void show(const LabelFacts& label, const std::vector<LabelFinding>& findings);
    [[nodiscard]] const std::optional<LabelFinding>& finding() const { return finding_; }

signals:
    void slipTaken();
    void asPrinted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<LabelFinding> finding_;
    QLabel *title_, *sentence_;
    QPushButton *take_, *asPrinted_;
};

}  // namespace nettare
