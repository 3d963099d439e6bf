#pragma once

#include <QLineEdit>
#include <QWidget>

#include <array>
#include <vector>

#include "core/food/own_food_entry.h"

class QGridLayout;

namespace nettare {

/// The kitchen measures of an own food as they are typed, one row each and an empty one at the end.
class MeasureFields : public QWidget {
    Q_OBJECT

public:
    explicit MeasureFields(QWidget* parent = nullptr);

    void show(const std::vector<MeasureEntry>& measures);
    /// Without empty rows at the end.
    [[nodiscard]] std::vector<MeasureEntry> entries() const;
    /// The field of that row by the name of its member: "amount", "unit", "qualifier", "grams".
    [[nodiscard]] QLineEdit* field(std::size_t row, const std::string& member) const;

signals:
    void edited();

private:
    using Row = std::array<QLineEdit*, 4>;
    void addRow(const MeasureEntry& measure);
    void follow();

    QWidget* body_ = nullptr;
    QGridLayout* grid_ = nullptr;
    std::vector<Row> rows_;
};

}  // namespace nettare
