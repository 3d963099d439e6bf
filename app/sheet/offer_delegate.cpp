#include "app/sheet/offer_delegate.h"

#include <QAbstractItemView>

#include <algorithm>

#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

QSize OfferDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QSize asked = QStyledItemDelegate::sizeHint(option, index);
    const int line = QFontMetrics{typeFont(TypeSize::Body)}.height();
    return {asked.width(), std::max(asked.height(), line + kSpace2Px)};
}

// The field keeps the focus, so the view's own selection would stay unseen.
void OfferDelegate::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    option->font = typeFont(TypeSize::Body);
    option->fontMetrics = QFontMetrics{option->font};
    option->showDecorationSelected = true;
    option->state.setFlag(QStyle::State_HasFocus, false);
    const auto* view = qobject_cast<const QAbstractItemView*>(option->widget);
    if (view != nullptr && view->currentIndex() == index)
        option->state |= QStyle::State_Selected | QStyle::State_Active;
}

}  // namespace nettare
