#include "app/shelf/shelf_delegate.h"

#include <QAbstractItemView>
#include <QGuiApplication>
#include <QPainter>

#include "app/shelf/shelf_model.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kInset = kSpace2Px + kRimPx;
constexpr int kWrap = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

bool isHeading(const QModelIndex& index) {
    return index.data(ShelfModel::RecipeRole).toString().isEmpty();
}

QFont headingFont() {
    QFont font = typeFont(TypeSize::Header, Weight::Semibold);
    font.setCapitalization(QFont::AllUppercase);
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.8);
    return font;
}

QFont revisionFont() {
    return figureFont(TypeSize::Header);
}

int revisionWidth(const QModelIndex& index) {
    const QString text = index.data(ShelfModel::RevisionRole).toString();
    if (text.isEmpty()) return 0;
    return QFontMetrics{revisionFont()}.horizontalAdvance(text) + kSpace2Px;
}

QRect titleRect(const QRect& row, const QModelIndex& index) {
    return row.adjusted(kInset, kSpace2Px, -kSpace2Px - revisionWidth(index), -kSpace2Px);
}

void paintHeading(QPainter& painter, const QRect& row, const QString& text, Shade shade) {
    painter.setFont(headingFont());
    painter.setPen(colour(Role::Ink2, shade));
    painter.drawText(row.adjusted(kRimPx, 0, 0, -kSpace2Px), Qt::AlignLeft | Qt::AlignBottom, text);
}

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, Shade shade) {
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    if (selected) {
        painter.fillRect(option.rect, colour(Role::Selection, shade));
        QRect rim = option.rect;
        rim.setWidth(kRimPx);
        painter.fillRect(rim, colour(Role::Cobalt, shade));
    } else if (option.state.testFlag(QStyle::State_MouseOver)) {
        painter.fillRect(option.rect, colour(Role::Alt, shade));
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter.setPen(QPen{colour(Role::Cobalt, shade), kFocusRingPx});
        painter.drawRect(option.rect.adjusted(1, 1, -1, -1));
    }
}

}  // namespace

void ShelfDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    // The list is transparent, so that its own palette knows no ground.
    const Shade shade = shadeOf(QGuiApplication::palette());
    const QString text = index.data(Qt::DisplayRole).toString();
    painter->save();
    if (isHeading(index)) {
        paintHeading(*painter, option.rect, text, shade);
        painter->restore();
        return;
    }
    paintGround(*painter, option, shade);
    painter->setFont(typeFont(TypeSize::Body));
    painter->setPen(colour(Role::Ink, shade));
    painter->drawText(titleRect(option.rect, index), kWrap, text);
    painter->setFont(revisionFont());
    painter->setPen(colour(Role::Ink2, shade));
    painter->drawText(option.rect.adjusted(0, kSpace2Px + 1, -kSpace2Px, 0),
                      Qt::AlignRight | Qt::AlignTop,
                      index.data(ShelfModel::RevisionRole).toString());
    painter->restore();
}

QSize ShelfDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = view == nullptr ? option.rect.width() : view->viewport()->width();
    if (isHeading(index)) {
        const int above = index.row() == 0 ? kSpace2Px : kSpace6Px;
        return {width, above + QFontMetrics{headingFont()}.height() + kSpace2Px};
    }
    const QRect room = titleRect(QRect{0, 0, width, 10'000}, index);
    const QRect text = QFontMetrics{typeFont(TypeSize::Body)}.boundingRect(
        room, kWrap, index.data(Qt::DisplayRole).toString());
    return {width, std::max(kControlHeightPx, text.height() + 2 * kSpace2Px)};
}

}  // namespace nettare
