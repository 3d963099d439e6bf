#include "app/widgets/number_column.h"

#include "app/theme/type.h"
#include "app/widgets/cell.h"

#include <QAbstractItemModel>
#include <QFontMetricsF>

#include <algorithm>

namespace nettare {

namespace {

NumberWidths measured(const QAbstractItemModel& model, int column, const QFont& viewFont) {
    NumberWidths widest;
    const QFontMetricsF unitMetrics{unitFont(viewFont)};
    for (int row = 0; row < model.rowCount(); ++row) {
        const Cell cell = model.index(row, column).data(kCellRole).value<Cell>();
        if (cell.kind != CellKind::Number) continue;
        const QFontMetricsF metrics{numberFont(viewFont, cell.strong)};
        const SplitNumber number = splitNumber(cell.text);
        const QString before = cell.before.isEmpty() ? QString{} : cell.before + u' ';
        widest.whole = std::max(widest.whole, metrics.horizontalAdvance(before + number.whole));
        widest.fraction = std::max(widest.fraction, metrics.horizontalAdvance(number.fraction));
        widest.unit = std::max(widest.unit, unitMetrics.horizontalAdvance(cell.unit));
    }
    return widest;
}

}  // namespace

SplitNumber splitNumber(const QString& number) {
    const auto isMark = [](QChar letter) { return letter == u'.' || letter == u','; };
    const auto mark = std::ranges::find_if(number, isMark);
    const qsizetype at = mark - number.begin();
    return {number.left(at), number.mid(at)};
}

QFont numberFont(const QFont& viewFont, bool strong) {
    QFont font = recut(viewFont, strong ? Weight::Semibold : Weight::Regular);
    font.setKerning(false);
    return font;
}

QFont unitFont(const QFont& viewFont) {
    return recut(viewFont, Weight::Regular);
}

NumberWidths NumberColumns::widths(const QAbstractItemModel& model, int column, const QFont& font) {
    watch(model);
    if (font != font_) {
        widths_.clear();
        font_ = font;
    }
    auto found = widths_.find(column);
    if (found == widths_.end()) found = widths_.insert(column, measured(model, column, font));
    return *found;
}

void NumberColumns::watch(const QAbstractItemModel& model) {
    if (watched_ == &model) return;
    if (!watched_.isNull()) watched_->disconnect(this);
    watched_ = &model;
    widths_.clear();
    const auto forget = [this] { widths_.clear(); };
    using Model = QAbstractItemModel;
    connect(&model, &Model::dataChanged, this, forget);
    connect(&model, &Model::layoutChanged, this, forget);
    connect(&model, &Model::modelReset, this, forget);
    connect(&model, &Model::rowsInserted, this, forget);
    connect(&model, &Model::rowsRemoved, this, forget);
    connect(&model, &Model::columnsInserted, this, forget);
    connect(&model, &Model::columnsRemoved, this, forget);
}

}  // namespace nettare
