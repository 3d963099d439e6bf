#pragma once

#include "app/compare/compare_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace nettare {

/// The table of a comparison, as high as its rows: the page around it scrolls. The two states'
/// titles stand over their columns.
class CompareTable : public QWidget {
    Q_OBJECT

public:
    explicit CompareTable(QWidget* parent = nullptr);

    void show(const QString& leftTitle, const QString& rightTitle, std::vector<ComparedRow> rows);
    void setChangesOnly(bool changesOnly);
    [[nodiscard]] CompareModel& model() const { return *model_; }
    [[nodiscard]] QTableView& view() const { return *table_; }

signals:
    /// A cell that the cook went to, in this widget.
    void cellReached(const QRect& cell);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fit();
    void alignTitles();

    CompareModel* model_;
    QTableView* table_;
    QLabel *leftTitle_, *rightTitle_;
};

}  // namespace nettare
