#include "app/widgets/table_delegate.h"

#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QFontMetrics>
#include <QHeaderView>
#include <QPainter>
#include <QTableView>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kRowAirPx = kSpace3Px;

Cell cellAt(const QModelIndex& index) {
    const QVariant given = index.data(kCellRole);
    return given.canConvert<Cell>() ? given.value<Cell>()
                                    : textCell(index.data(Qt::DisplayRole).toString());
}

bool standsAtRight(const QModelIndex& index) {
    const QVariant alignment =
        index.model()->headerData(index.column(), Qt::Horizontal, Qt::TextAlignmentRole);
    return (alignment.toInt() & Qt::AlignRight) != 0;
}

/// The column at the left edge, whatever was moved or hidden.
bool isFirstColumn(const QStyleOptionViewItem& option, const QModelIndex& index) {
    const auto* const table = qobject_cast<const QTableView*>(option.widget);
    if (table == nullptr) return index.column() == 0;
    const QHeaderView* const header = table->horizontalHeader();
    for (int i = 0; i < header->count(); ++i) {
        const int column = header->logicalIndex(i);
        if (!header->isSectionHidden(column)) return column == index.column();
    }
    return false;
}

}  // namespace

TableDelegate::TableDelegate(QObject* parent)
    : QStyledItemDelegate{parent}, columns_{new NumberColumns{this}} {}

CellPlace TableDelegate::placeOf(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    CellPlace place;
    place.rect = option.rect;
    place.font = option.font;
    place.shade = shadeOf(option.palette);
    place.widths = columns_->widths(*index.model(), index.column(), option.font);
    place.selected = option.state.testFlag(QStyle::State_Selected);
    place.focused = option.state.testFlag(QStyle::State_HasFocus);
    place.firstColumn = isFirstColumn(option, index);
    place.atRight = standsAtRight(index);
    if (option.widget != nullptr) place.pixelRatio = option.widget->devicePixelRatioF();
    return place;
}

void TableDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    paintCell(*painter, cellAt(index), placeOf(option, index));
}

QSize TableDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return {cellWidthPx(cellAt(index), placeOf(option, index)), rowHeightPx(option.font)};
}

void TableDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex&) const {
    editor->setGeometry(option.rect.adjusted(0, 0, 0, -1));
}

int rowHeightPx(const QFont& font) {
    return std::max(kControlHeightPx, QFontMetrics{font}.height() + kRowAirPx);
}

void dressTable(QTableView& table) {
    table.setItemDelegate(new TableDelegate{&table});
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.setFrameShape(QFrame::NoFrame);
    table.setTabKeyNavigation(false);
    table.setCornerButtonEnabled(false);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table.verticalHeader()->hide();
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.verticalHeader()->setMinimumSectionSize(kControlHeightPx);
    table.verticalHeader()->setDefaultSectionSize(rowHeightPx(table.font()));
    QHeaderView* const header = table.horizontalHeader();
    header->setFont(typeFont(TypeSize::Header));
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setMinimumHeight(kControlHeightPx);
    header->setSectionsMovable(false);
}

}  // namespace nettare
