#include "app/compare/compare_table.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/table_delegate.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPainter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace nettare {

namespace {

QLabel* titleLabel() {
    auto* const label = new QLabel;
    label->setFont(typeFont(TypeSize::Header, Weight::Semibold));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumHeight(kControlHeightPx);
    return label;
}

}  // namespace

CompareTable::CompareTable(QWidget* parent)
    : QWidget{parent},
      model_{new CompareModel{this}},
      table_{new QTableView},
      leftTitle_{titleLabel()},
      rightTitle_{titleLabel()} {
    auto* const titles = new QHBoxLayout;
    titles->setSpacing(0);
    titles->addWidget(leftTitle_);
    titles->addWidget(rightTitle_, 1);
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(titles);
    column->addWidget(table_);
    dressTable(*table_);
    table_->setObjectName(QStringLiteral("comparison"));
    table_->setAccessibleName(tr("Lines of both states side by side"));
    table_->setModel(model_);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                const QRect cell = table_->visualRect(current);
                emit cellReached(cell.translated(table_->viewport()->mapTo(this, QPoint{0, 0})));
            });
    connect(table_->horizontalHeader(), &QHeaderView::sectionResized, this,
            &CompareTable::alignTitles);
}

void CompareTable::show(const QString& leftTitle, const QString& rightTitle,
                        std::vector<ComparedRow> rows) {
    leftTitle_->setText(leftTitle);
    rightTitle_->setText(rightTitle);
    model_->show(std::move(rows));
    table_->setAccessibleDescription(tr("Left: %1. Right: %2.").arg(leftTitle, rightTitle));
    fit();
}

void CompareTable::setChangesOnly(bool changesOnly) {
    model_->setChangesOnly(changesOnly);
    fit();
}

void CompareTable::fit() {
    QHeaderView* const header = table_->horizontalHeader();
    for (int column = 0; column < CompareModel::ColumnCount; ++column) {
        const bool food = column == CompareModel::LeftFood || column == CompareModel::RightFood;
        header->setSectionResizeMode(column, food ? QHeaderView::Stretch : QHeaderView::Fixed);
        if (!food) table_->resizeColumnToContents(column);
    }
    const int rows = model_->rowCount() * table_->verticalHeader()->defaultSectionSize();
    table_->setFixedHeight(std::max(header->sizeHint().height(), header->minimumHeight()) + rows);
    alignTitles();
}

void CompareTable::alignTitles() {
    const int half = table_->columnViewportPosition(CompareModel::RightAmount);
    leftTitle_->setFixedWidth(half);
    leftTitle_->setContentsMargins(kSpace2Px, kSpace1Px, kSpace2Px, kSpace1Px);
    rightTitle_->setContentsMargins(kSpace2Px, kSpace1Px, kSpace2Px, kSpace1Px);
}

void CompareTable::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::Raised, shadeOf(palette())));
}

}  // namespace nettare
