#include "app/pantry/foods_side_by_side.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/pantry/cells_model.h"
#include "app/pantry/compared_foods.h"
#include "app/pantry/food_words.h"
#include "app/pantry/whole_table.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

/// "A", "B" ...: what stands above the columns; the names stand above the table in full.
QString letterOf(std::size_t at) {
    return QString{QChar{static_cast<char16_t>(u'A' + at)}};
}

}  // namespace

FoodsSideBySide::FoodsSideBySide(QWidget* parent)
    : QWidget{parent},
      names_{new QLabel},
      onlyDifferent_{new QCheckBox{tr("Only what differs")}},
      leave_{new QPushButton{tr("Back to the food")}},
      model_{new CellsModel{{}, {}, this}},
      table_{new WholeTable{0}} {
    auto* title = new QLabel{tr("Side by side, per 100 g edible portion")};
    title->setFont(typeFont(TypeSize::Section, Weight::Bold));
    title->setWordWrap(true);
    names_->setObjectName(QStringLiteral("comparedNames"));
    names_->setTextFormat(Qt::PlainText);
    names_->setWordWrap(true);
    names_->setMinimumWidth(1);
    onlyDifferent_->setObjectName(QStringLiteral("onlyDifferent"));
    leave_->setObjectName(QStringLiteral("leaveComparison"));
    table_->setObjectName(QStringLiteral("comparedFoods"));
    table_->setAccessibleName(tr("Foods side by side"));
    table_->setModel(model_);
    auto* signs = new QLabel{tr("↑ most and ↓ least, where they differ by more than their ±")};
    signs->setProperty("tone", QStringLiteral("secondary"));
    signs->setWordWrap(true);
    auto* options = new QHBoxLayout;
    options->addWidget(onlyDifferent_);
    options->addStretch(1);
    options->addWidget(leave_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace6Px);
    column->setSpacing(kSpace2Px);
    column->addWidget(title);
    column->addWidget(names_);
    column->addLayout(options);
    column->addWidget(table_);
    column->addWidget(signs);
    column->addStretch(1);
    connect(onlyDifferent_, &QCheckBox::toggled, this, &FoodsSideBySide::fill);
    connect(leave_, &QPushButton::clicked, this, &FoodsSideBySide::left);
}

void FoodsSideBySide::show(std::vector<TableFood> foods) {
    foods_ = std::move(foods);
    fill();
}

void FoodsSideBySide::fill() {
    if (foods_.size() < 2) return;
    QStringList names, headers{tr("Component")};
    std::vector<int> numbers;
    for (std::size_t i = 0; i < foods_.size(); ++i) {
        names += tr("%1: %2 · %3")
                     .arg(letterOf(i), QString::fromStdString(foods_[i].name),
                          sourceName(foods_[i].row));
        headers += letterOf(i);
        numbers.push_back(static_cast<int>(i) + 1);
    }
    headers += tr("Differs");
    names_->setText(names.join(u'\n'));
    std::vector<CellsModel::Row> rows;
    for (const ComparedComponent& each : comparedComponents(foods_)) {
        if (onlyDifferent_->isChecked() && !each.differs.strong) continue;
        CellsModel::Row row{textCell(each.name, each.unit)};
        for (const Cell& cell : each.values) row.push_back(cell);
        row.push_back(each.differs);
        rows.push_back(std::move(row));
    }
    model_->show(headers, std::move(numbers), std::move(rows));
    table_->setWideColumn(model_->columnCount() - 1);
    table_->fit();
}

}  // namespace nettare
