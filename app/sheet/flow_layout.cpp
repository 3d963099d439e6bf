#include "app/sheet/flow_layout.h"

#include <QWidget>

#include <algorithm>

namespace nettare {

FlowLayout::FlowLayout(int columnGap_px, int rowGap_px, QWidget* parent)
    : QLayout{parent}, columnGap_px_{columnGap_px}, rowGap_px_{rowGap_px} {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (QLayoutItem* item : items_) delete item;
}

void FlowLayout::insertWidget(int index, QWidget* widget) {
    addChildWidget(widget);
    items_.insert(items_.begin() + index, new QWidgetItem{widget});
    invalidate();
}

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index < 0 || index >= count() ? nullptr : items_[static_cast<std::size_t>(index)];
}

QLayoutItem* FlowLayout::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item != nullptr) items_.erase(items_.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const {
    return arrange({0, 0, width, 0}, false);
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
    return size;
}

QSize FlowLayout::sizeHint() const {
    QSize size;
    for (const QLayoutItem* item : items_) {
        const QSize one = item->sizeHint();
        size = {size.width() + one.width() + columnGap_px_, std::max(size.height(), one.height())};
    }
    return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int FlowLayout::arrange(const QRect& rect, bool place) const {
    int x = rect.x(), y = rect.y(), rowHeight = 0;
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint();
        if (x > rect.x() && x + size.width() > rect.right() + 1) {
            x = rect.x();
            y += rowHeight + rowGap_px_;
            rowHeight = 0;
        }
        if (place) item->setGeometry({QPoint{x, y}, size});
        x += size.width() + columnGap_px_;
        rowHeight = std::max(rowHeight, size.height());
    }
    return y + rowHeight - rect.y();
}

}  // namespace nettare
