#pragma once

#include <QAbstractTableModel>
#include <QPointer>

#include <vector>

#include "app/sheet/line_rows.h"

namespace nettare {

/// The lines of a draft for the ingredient table. Holds no truth of its own: it reads the draft
/// again after each change. Editors write to the draft themselves.
class LinesModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setDraft(DraftSession* draft);
    [[nodiscard]] DraftSession* draft() const { return draft_; }
    [[nodiscard]] const LineRow& row(int index) const {
        return rows_[static_cast<std::size_t>(index)];
    }
    /// -1 where no row has that id.
    [[nodiscard]] int rowOf(const std::string& line) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    void follow();

    QPointer<DraftSession> draft_;
    std::vector<LineRow> rows_;
};

}  // namespace nettare
