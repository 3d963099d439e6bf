#pragma once

#include <QStyledItemDelegate>

#include "app/theme/palette.h"
#include "core/publish/path.h"

namespace nettare {

class PathModel;

/// Paints a step of a path as a card: mark, value at the right edge of a column of numbers, what
/// it is beside it, and a second line below. The words wrap; nothing is cut.
class StepDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit StepDelegate(const PathModel& model, QObject* parent = nullptr);

    /// Width in px that the column of numbers takes; measured anew when the path changed.
    void measureNumbers();
    /// The view's inner width in px, by which rows are laid out.
    void setRoom(int widthPx, int indentPx);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    struct Parts;
    [[nodiscard]] Parts partsOf(const QModelIndex& index, int widthPx) const;
    [[nodiscard]] double numberWidth(const QModelIndex& index) const;
    void paintNumber(QPainter& painter, const Parts& parts, const QModelIndex& index, double right,
                     double baseline, Shade shade) const;

    const PathModel& model_;
    double numbersPx_ = 0;
    int roomPx_ = 0, indentPx_ = 0;
};

}  // namespace nettare
