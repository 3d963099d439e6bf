#include "app/pantry/food_list_delegate.h"

#include <QPainter>

#include <algorithm>

#include "app/pantry/food_list_model.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/way_mark.h"

namespace nettare {

namespace {

constexpr int kFoodInset = kSpace3Px;
constexpr int kLineAir = 6;
constexpr int kLineGap = 2;

QFont nameFont() {
    return typeFont(TypeSize::Body, Weight::Semibold);
}
QFont noteFont() {
    return typeFont(TypeSize::Header);
}
QFont headFont() {
    return typeFont(TypeSize::Header, Weight::Semibold);
}

FoodListRow::Kind kindOf(const QModelIndex& index) {
    return static_cast<FoodListRow::Kind>(index.data(FoodListModel::KindRole).toInt());
}

int heightOf(const QFont& font) {
    return QFontMetrics{font}.height();
}

/// Paints within one row of the list.
class RowPainter {
public:
    RowPainter(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index)
        : painter_{painter},
          rect_{option.rect},
          index_{index},
          shade_{shadeOf(option.palette)},
          selected_{option.state.testFlag(QStyle::State_Selected)},
          hovered_{option.state.testFlag(QStyle::State_MouseOver)},
          focused_{option.state.testFlag(QStyle::State_HasFocus)} {}

    void ground() {
        const Role role = selected_ ? Role::Selection : hovered_ ? Role::Alt : Role::Raised;
        painter_.fillRect(rect_, colour(role, shade_));
        painter_.fillRect(rect_.left(), rect_.bottom(), rect_.width(), 1,
                          colour(Role::Hairline, shade_));
        if (selected_)
            painter_.fillRect(rect_.left(), rect_.top(), kRimPx, rect_.height(),
                              colour(Role::Cobalt, shade_));
    }

    void heading() {
        painter_.fillRect(rect_, colour(Role::Paper, shade_));
        draw(rect_.adjusted(0, 0, 0, -kSpace1Px), headFont(), Role::Ink2,
             Qt::AlignLeft | Qt::AlignBottom, text(Qt::DisplayRole));
    }

    void group() {
        ground();
        QRect room = rect_.adjusted(kFoodInset, 0, -kFoodInset, 0);
        chevron(room);
        room.setRight(room.right() - kSpace6Px);
        twoLines(room);
        ring();
    }

    void food() {
        ground();
        QRect room = rect_.adjusted(kFoodInset, 0, -kFoodInset, 0);
        QRect known = room;
        known.setLeft(room.right() + 1 - FoodListDelegate::knownWidthPx());
        draw(known, figureFont(TypeSize::Header), Role::Ink2, Qt::AlignRight | Qt::AlignVCenter,
             text(FoodListModel::KnownRole));
        QRect energy = room;
        energy.setRight(known.left() - 1);
        energy.setLeft(energy.right() + 1 - FoodListDelegate::energyWidthPx());
        const QString kcal = text(FoodListModel::EnergyRole);
        draw(energy, kcal.isEmpty() ? noteFont() : figureFont(TypeSize::Body),
             kcal.isEmpty() ? Role::Ink2 : Role::Ink, Qt::AlignRight | Qt::AlignVCenter,
             kcal.isEmpty() ? FoodListModel::tr("no data") : kcal);
        room.setRight(energy.left() - kSpace2Px);
        if (index_.data(FoodListModel::MarkedRole).toBool()) room.setLeft(room.left() + tick(room));
        twoLines(room);
        ring();
    }

private:
    [[nodiscard]] QString text(int role) const { return index_.data(role).toString(); }

    void draw(const QRect& room, const QFont& font, Role ink, int flags, const QString& words) {
        painter_.setFont(font);
        painter_.setPen(colour(ink, shade_));
        painter_.drawText(room, flags | Qt::TextSingleLine,
                          QFontMetrics{font}.elidedText(words, Qt::ElideRight, room.width() + 1));
    }

    void twoLines(const QRect& room) {
        const int both = heightOf(nameFont()) + kLineGap + heightOf(noteFont());
        const int top = room.top() + (room.height() - 1 - both) / 2;
        const QRect upper{room.left(), top, room.width(), heightOf(nameFont())};
        const QRect lower{room.left(), upper.bottom() + 1 + kLineGap, room.width(),
                          heightOf(noteFont())};
        draw(upper, nameFont(), Role::Ink, Qt::AlignLeft | Qt::AlignVCenter, text(Qt::DisplayRole));
        QRect note = lower;
        if (index_.data(FoodListModel::LabelRole).toBool()) note.setLeft(lower.left() + tag(lower));
        draw(note, noteFont(), Role::Ink2, Qt::AlignLeft | Qt::AlignVCenter,
             text(FoodListModel::NoteRole));
    }

    /// The mark of labels. Answers the room it takes, in px.
    int tag(const QRect& line) {
        const double side = markSidePx(noteFont());
        const double top = line.top() + (line.height() - side) / 2;
        paintMark(painter_, Mark::Label, QRectF{line.left() + 0.0, top, side, side}, shade_);
        return static_cast<int>(side) + kSpace2Px - 2;
    }

    /// A tick in a box: chosen to be compared. Answers the room it takes, in px.
    int tick(const QRect& room) {
        constexpr int kSide = 16;
        const QRect box{room.left(), room.center().y() - kSide / 2, kSide, kSide};
        painter_.fillRect(box, colour(Role::Cobalt, shade_));
        painter_.save();
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.setPen(QPen{colour(Role::OnCobalt, shade_), 2});
        const QPointF points[] = {box.topLeft() + QPointF{4, 8.5}, box.topLeft() + QPointF{7, 11.5},
                                  box.topLeft() + QPointF{12, 5}};
        painter_.drawPolyline(points, 3);
        painter_.restore();
        return kSide + kSpace2Px;
    }

    void chevron(const QRect& room) {
        painter_.save();
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.setPen(QPen{colour(Role::Ink2, shade_), 2});
        const QPointF tip{room.right() - 2.0, room.center().y() + 0.5};
        const QPointF points[] = {tip + QPointF{-5, -5}, tip, tip + QPointF{-5, 5}};
        painter_.drawPolyline(points, 3);
        painter_.restore();
    }

    void ring() {
        if (!focused_) return;
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(QPen{colour(Role::Cobalt, shade_), kFocusRingPx});
        painter_.drawRect(rect_.adjusted(1, 1, -1, -2));
    }

    QPainter& painter_;
    QRect rect_;
    const QModelIndex& index_;
    Shade shade_;
    bool selected_, hovered_, focused_;
};

}  // namespace

int FoodListDelegate::energyWidthPx() {
    return std::max(QFontMetrics{noteFont()}.horizontalAdvance(FoodListModel::tr("kcal/100 g")),
                    QFontMetrics{noteFont()}.horizontalAdvance(FoodListModel::tr("no data"))) +
           kSpace2Px;
}

int FoodListDelegate::knownWidthPx() {
    return std::max(QFontMetrics{noteFont()}.horizontalAdvance(FoodListModel::tr("Known")),
                    QFontMetrics{figureFont(TypeSize::Header)}.horizontalAdvance(
                        FoodListModel::tr("%1 of %2").arg(41).arg(41))) +
           kSpace4Px;
}

void FoodListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    painter->save();
    RowPainter row{*painter, option, index};
    switch (kindOf(index)) {
        case FoodListRow::Kind::Heading:
            row.heading();
            break;
        case FoodListRow::Kind::Food:
            row.food();
            break;
        case FoodListRow::Kind::Group:
            row.group();
            break;
    }
    painter->restore();
}

QSize FoodListDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    if (kindOf(index) == FoodListRow::Kind::Heading)
        return {option.rect.width(),
                heightOf(headFont()) + (index.row() == 0 ? kSpace2Px : kSpace4Px)};
    return {option.rect.width(),
            heightOf(nameFont()) + kLineGap + heightOf(noteFont()) + 2 * kLineAir};
}

}  // namespace nettare
