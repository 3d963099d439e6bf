#include "app/path/share_bars.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr int kShareBarHeightPx = 12;
constexpr int kLeastShareBarPx = 64;
constexpr int kNameColumn = 0, kBarColumn = 1, kPercentColumn = 2;

/// One bar; `part` of its width, 0 to 1.
class ShareBar : public QWidget {
public:
    explicit ShareBar(double part) : part_{part} {
        setMinimumSize(kLeastShareBarPx, kShareBarHeightPx);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter{this};
        const int wide = std::max(2, static_cast<int>(part_ * width()));
        painter.fillRect(0, (height() - kShareBarHeightPx) / 2, wide, kShareBarHeightPx,
                         colour(Role::Table, shadeOf(palette())));
    }

private:
    double part_;
};

QLabel* barLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setFont(figureFont(TypeSize::Body));
    label->setContentsMargins(0, kSpace1Px + 1, 0, kSpace2Px);
    return label;
}

}  // namespace

QString shareText(double share) {
    if (share > 0 && share < 0.005) return ShareBars::tr("< 1 %");
    return ShareBars::tr("%1 %").arg(QString::fromStdString(numberAt(0, 100 * share)));
}

ShareBars::ShareBars(QWidget* parent)
    : FocusGroup{tr("Shares of the uncertainty"), parent}, grid_{new QGridLayout{this}} {
    setObjectName(QStringLiteral("shares"));
    grid_->setContentsMargins(kSpace2Px, ringRoomPx(), kSpace2Px, ringRoomPx());
    grid_->setHorizontalSpacing(kSpace3Px);
    grid_->setVerticalSpacing(0);
    grid_->setColumnStretch(kNameColumn, 5);
    grid_->setColumnStretch(kBarColumn, 4);
}

void ShareBars::clear() {
    while (QLayoutItem* item = grid_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void ShareBars::show(const std::vector<BudgetShare>& shares) {
    clear();
    double most = 0;
    for (const BudgetShare& share : shares) most = std::max(most, share.share);
    QStringList spoken;
    int row = 0;
    for (const BudgetShare& share : shares) {
        auto* name = barLabel(QString::fromStdString(share.name));
        name->setWordWrap(true);
        auto* percent = barLabel(shareText(share.share));
        percent->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        grid_->addWidget(name, row, kNameColumn);
        grid_->addWidget(new ShareBar{most > 0 ? share.share / most : 0}, row, kBarColumn);
        grid_->addWidget(percent, row, kPercentColumn);
        spoken << tr("%1: %2").arg(name->text(), percent->text());
        ++row;
    }
    setSpoken(spoken.join(QStringLiteral("; ")));
    setVisible(!shares.empty());
    update();
}

void ShareBars::paintEvent(QPaintEvent* event) {
    FocusGroup::paintEvent(event);
    QPainter painter{this};
    const QColor line = colour(Role::Hairline, shadeOf(palette()));
    for (int row = 0; row + 1 < grid_->rowCount(); ++row) {
        const QRect cell = grid_->cellRect(row, kNameColumn);
        if (cell.isValid() && grid_->itemAtPosition(row + 1, kNameColumn) != nullptr)
            painter.fillRect(kSpace2Px, cell.bottom(), width() - 2 * kSpace2Px, 1, line);
    }
}

}  // namespace nettare
