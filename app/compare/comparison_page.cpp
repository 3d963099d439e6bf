#include "app/compare/comparison_page.h"

#include "app/compare/change_cards.h"
#include "app/compare/compare_table.h"
#include "app/compare/method_difference.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace nettare {

ComparisonPage::ComparisonPage(QWidget* parent)
    : QScrollArea{parent},
      page_{new QWidget},
      changesOnly_{new QCheckBox{tr("Changes only")}},
      sameLines_{new QLabel{tr("All ingredient lines are the same.")}},
      table_{new CompareTable},
      cards_{new ChangeCards},
      method_{new MethodDifference} {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    auto* const column = new QVBoxLayout{page_};
    column->setContentsMargins(kSpace6Px, kSpace2Px, kSpace6Px, kSpace6Px);
    column->setSpacing(kSpace3Px);
    auto* const over = new QHBoxLayout;
    changesOnly_->setObjectName(QStringLiteral("changesOnly"));
    sameLines_->setProperty("tone", QStringLiteral("secondary"));
    over->addWidget(sameLines_);
    over->addStretch(1);
    over->addWidget(changesOnly_);
    auto* const methodHead = new QLabel{tr("Method")};
    methodHead->setFont(typeFont(TypeSize::Header, Weight::Semibold));
    methodHead->setProperty("tone", QStringLiteral("secondary"));
    column->addLayout(over);
    column->addWidget(table_);
    column->addWidget(cards_);
    column->addWidget(methodHead);
    column->addWidget(method_);
    column->addStretch(1);
    setWidget(page_);
    page_->setAutoFillBackground(false);
    clear();
    connect(changesOnly_, &QCheckBox::toggled, this, &ComparisonPage::setChangesOnly);
    connect(table_, &CompareTable::cellReached, this, &ComparisonPage::bringIntoSight);
}

void ComparisonPage::show(const QString& leftTitle, const QString& rightTitle,
                          ComparisonWords words) {
    table_->show(leftTitle, rightTitle, std::move(words.rows));
    cards_->show(words.cards);
    method_->show(std::move(words.steps));
    sameLines_->setVisible(!table_->model().anyChange());
    page_->show();
}

void ComparisonPage::setChangesOnly(bool changesOnly) {
    table_->setChangesOnly(changesOnly);
    method_->setChangesOnly(changesOnly);
}

void ComparisonPage::bringIntoSight(const QRect& cell) {
    const QPoint at = table_->mapTo(page_, cell.center());
    ensureVisible(at.x(), at.y(), 0, cell.height());
}

}  // namespace nettare
