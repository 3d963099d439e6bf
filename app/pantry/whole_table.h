#pragma once

#include <QTableView>

namespace nettare {

/// A table as tall as its rows, part of a page that scrolls: it scrolls the page along with the
/// current row. One column takes the room that the others leave.
class WholeTable : public QTableView {
    Q_OBJECT

public:
    explicit WholeTable(int wideColumn, QWidget* parent = nullptr);

    /// After the model changed: widths, and height.
    void fit();
    void setWideColumn(int column) { wideColumn_ = column; }

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    int wideColumn_;
};

}  // namespace nettare
