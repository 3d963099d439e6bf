#pragma once

#include <QCheckBox>
#include <QWidget>

#include <vector>

#include "core/food/table_food.h"

class QLabel;
class QPushButton;

namespace nettare {

class CellsModel;
class WholeTable;

/// Two to four foods side by side, per 100 g edible portion.
class FoodsSideBySide : public QWidget {
    Q_OBJECT

public:
    explicit FoodsSideBySide(QWidget* parent = nullptr);

    void show(std::vector<TableFood> foods);

signals:
    void left();

private:
    void fill();

    std::vector<TableFood> foods_;
    QLabel* names_;
    QCheckBox* onlyDifferent_;
    QPushButton* leave_;
    CellsModel* model_;
    WholeTable* table_;
};

}  // namespace nettare
