#pragma once

#include <QString>

#include <vector>

#include "app/compare/focus_group.h"
#include "core/nutrition/budget_share.h"

class QGridLayout;

namespace nettare {

/// "46 %"; "< 1 %" for what would round to nothing.
[[nodiscard]] QString shareText(double share);

/// Shares of an uncertainty as bars with their percent, largest first.
class ShareBars : public FocusGroup {
    Q_OBJECT

public:
    explicit ShareBars(QWidget* parent = nullptr);

    void show(const std::vector<BudgetShare>& shares);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void clear();

    QGridLayout* grid_;
};

}  // namespace nettare
