#include "app/sheet/line_delegate.h"

#include <QKeyEvent>
#include <QPainter>

#include <utility>

#include "app/session/kitchen_session.h"
#include "app/sheet/draft_field.h"
#include "app/sheet/ingredient_field.h"
#include "app/sheet/lines_model.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/way_mark.h"
#include "core/edit/line_edits.h"

namespace nettare {

namespace {

/// The second text stands closer to the first than a row of its own would.
constexpr int kRisePx = 6;
constexpr int kSecondText = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

QString amountOf(const DraftSession& draft, const std::string& line) {
    for (const LineRow& row : lineRows(draft))
        if (row.id == line) return row.amount;
    return {};
}

bool isFailing(const DraftSession& draft, const std::string& line) {
    const auto failing = failingLine(draft);
    const auto rows = lineRows(draft);
    return failing && *failing < rows.size() && rows[*failing].id == line;
}

DraftMember amountMember(const std::string& line) {
    return {
        [line](const DraftSession& draft) { return amountOf(draft, line); },
        [line](const Json& document, const std::string& typed) -> Result<Edit> {
            auto edit = setLineAmount(document, line, typed);
            if (!edit) return fail(edit.error());
            return std::move(edit->edit);
        },
        [line](const DraftSession& draft, const std::string&) { return isFailing(draft, line); }};
}

/// Where the second text begins in its cell.
int secondLeftPx(const Cell& cell, const QFont& font) {
    if (cell.kind != CellKind::Way) return kSpace2Px;
    return kSpace2Px + static_cast<int>(markSidePx(font)) + kSpace2Px;
}

/// Height of the second text in a room of that width: as many lines as its words need.
int secondTextPx(const QString& second, int roomPx) {
    const QFontMetrics metrics{typeFont(TypeSize::Header)};
    return metrics.boundingRect(QRect{0, 0, roomPx, 1000}, kSecondText, second).height();
}

/// What does not fit behind the first word of a way goes to the second text: "weighed" above
/// "scaled".
Cell folded(Cell cell, const CellPlace& place) {
    if (cell.kind != CellKind::Way) return cell;
    Cell first = cell;
    first.muted.clear();
    const qsizetype comma = cell.text.indexOf(QStringLiteral(", "));
    if (comma < 0 || cellWidthPx(first, place) <= place.rect.width()) return cell;
    const QString rest = cell.text.mid(comma + 2);
    cell.muted = cell.muted.isEmpty() ? rest : rest + QStringLiteral(" · ") + cell.muted;
    cell.text.truncate(comma);
    return cell;
}

/// The part of a tall cell below its first line.
void paintBelow(QPainter& painter, const Cell& cell, const CellPlace& place, const QRect& whole,
                const QString& second) {
    const QRect below{whole.left(), place.rect.bottom(), whole.width(),
                      whole.bottom() - place.rect.bottom() + 1};
    const Role ground = place.selected ? Role::Selection : Role::Raised;
    painter.fillRect(below, colour(ground, place.shade));
    painter.fillRect(whole.left(), whole.bottom(), whole.width(), 1,
                     colour(Role::Hairline, place.shade));
    if (place.selected && place.firstColumn)
        painter.fillRect(below.left(), below.top(), kRimPx, below.height(),
                         colour(Role::Cobalt, place.shade));
    const int left = secondLeftPx(cell, place.font);
    const QRect room{whole.left() + left, below.top() - kRisePx, whole.width() - left - kSpace2Px,
                     whole.bottom() - below.top() + kRisePx};
    painter.setFont(typeFont(TypeSize::Header));
    painter.setPen(colour(Role::Ink2, place.shade));
    painter.drawText(room, kSecondText, second);
}

void paintFocus(QPainter& painter, const QRect& whole, Shade shade) {
    painter.setPen(QPen{colour(Role::Cobalt, shade), kFocusRingPx});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(whole.adjusted(1, 1, -1, -2));
}

}  // namespace

LineDelegate::LineDelegate(KitchenSession& kitchen, RefusalLine& refusal, QObject* parent)
    : TableDelegate{parent}, kitchen_{kitchen}, refusal_{refusal} {}

int LineDelegate::rowHeightFor(const Cell& cell, int columnWidth, const QFont& font) {
    CellPlace place;
    place.rect = {0, 0, columnWidth, rowHeightPx(font)};
    place.font = font;
    const Cell both = folded(cell, place);
    if (both.muted.isEmpty() || cellWidthPx(cell, place) <= columnWidth) return rowHeightPx(font);
    const int roomPx = columnWidth - secondLeftPx(cell, font) - kSpace2Px;
    return rowHeightPx(font) - kRisePx + kSpace1Px + secondTextPx(both.muted, roomPx);
}

void LineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const int oneLine = rowHeightPx(option.font);
    if (option.rect.height() <= oneLine) return TableDelegate::paint(painter, option, index);
    CellPlace place = placeOf(option, index);
    Cell cell = folded(index.data(kCellRole).value<Cell>(), place);
    const QRect whole = place.rect;
    const QString second = std::exchange(cell.muted, QString{});
    // The lines of all cells stand at one height: that of a row of one line.
    place.rect.setHeight(oneLine);
    const bool focused = std::exchange(place.focused, false);
    paintCell(*painter, cell, place);
    paintBelow(*painter, cell, place, whole, second);
    if (focused) paintFocus(*painter, whole, place.shade);
}

bool LineDelegate::eventFilter(QObject* editor, QEvent* event) {
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        if (auto* amount = qobject_cast<DraftField*>(editor)) amount->takeBack();
        if (auto* ingredient = qobject_cast<IngredientField*>(editor)) ingredient->takeBack();
    }
    return TableDelegate::eventFilter(editor, event);
}

QWidget* LineDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                    const QModelIndex& index) const {
    const auto* model = qobject_cast<const LinesModel*>(index.model());
    if (model == nullptr || kitchen_.draft() == nullptr) return nullptr;
    const LineRow& row = model->row(index.row());
    if (index.column() == static_cast<int>(LineColumn::Ingredient)) {
        auto* field = new IngredientField{kitchen_, row.id, parent};
        refusal_.watch(field);
        return field;
    }
    auto* field = new DraftField{tr("Amount of %1").arg(row.food), amountMember(row.id), parent};
    refusal_.watch(field);
    field->setDraft(kitchen_.draft());
    return field;
}

}  // namespace nettare
