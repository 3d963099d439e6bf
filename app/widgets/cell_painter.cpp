#include "app/widgets/cell_painter.h"

#include "app/icons/icon_engine.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/way_mark.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

constexpr int kPadPx = kSpace2Px;
constexpr int kUnitGapPx = kSpace1Px;
constexpr int kChangeMarkPx = 20;
constexpr int kProblemSignPx = 16;
constexpr int kShareHeightPx = 8;

QColor inkIn(const CellPlace& place, Role role) {
    return colour(role, place.shade);
}

double widthOf(const QFont& font, const QString& text) {
    return QFontMetricsF{font}.horizontalAdvance(text);
}

Role groundOf(const Cell& cell, const CellPlace& place) {
    switch (cell.change) {
        case CellChange::Added:
            return Role::AddedFill;
        case CellChange::Removed:
            return Role::RemovedFill;
        case CellChange::Changed:
            return Role::Selection;
        case CellChange::None:
        case CellChange::Equal:
            break;
    }
    return place.selected ? Role::Selection : Role::Raised;
}

Role textInk(const Cell& cell) {
    return cell.change == CellChange::Equal && cell.ink == Role::Ink ? Role::Ink2 : cell.ink;
}

QString changeMark(CellChange change) {
    switch (change) {
        case CellChange::Added:
            return QStringLiteral("+");
        case CellChange::Removed:
            return QString{QChar{0x2212}};
        case CellChange::Changed:
            return QString{QChar{0x2192}};
        case CellChange::None:
        case CellChange::Equal:
            break;
    }
    return {};
}

QFont struckThrough(QFont font, bool strike) {
    font.setStrikeOut(strike);
    return font;
}

/// Draws on the line of the row's text, from x; elided to `width`. Returns the width taken.
double drawAt(QPainter& painter, const CellPlace& place, double x, double width, const QFont& font,
              Role ink, const QString& text) {
    if (text.isEmpty() || width <= 0) return 0;
    const QFontMetricsF metrics{font};
    const QString fitting = metrics.elidedText(text, Qt::ElideRight, width + 0.5);
    const QFontMetricsF line{place.font};
    const double top = place.rect.top() + (place.rect.height() - 1 - line.height()) / 2.0;
    painter.setFont(font);
    painter.setPen(inkIn(place, ink));
    painter.drawText(QPointF{x, std::round(top + line.ascent())}, fitting);
    return metrics.horizontalAdvance(fitting);
}

/// The part of the cell between the leading mark of a change and the sign of a problem.
QRect contentRect(const Cell& cell, const CellPlace& place) {
    QRect rect = place.rect.adjusted(kPadPx, 0, -kPadPx, -1);
    if (!changeMark(cell.change).isEmpty()) rect.setLeft(rect.left() + kChangeMarkPx);
    if (!cell.problem.isEmpty() && !place.atRight)
        rect.setRight(rect.right() - kProblemSignPx - kSpace1Px);
    return rect;
}

double drawWas(QPainter& painter, const Cell& cell, const CellPlace& place, const QRect& content) {
    if (cell.was.isEmpty()) return 0;
    return drawAt(painter, place, content.left(), content.width(), struckThrough(place.font, true),
                  Role::Ink2, cell.was) +
           kSpace2Px;
}

void paintText(QPainter& painter, const Cell& cell, const CellPlace& place) {
    const QRect content = contentRect(cell, place);
    const QFont font = struckThrough(cell.strong ? recut(place.font, Weight::Semibold) : place.font,
                                     cell.change == CellChange::Removed);
    double x = content.left() + drawWas(painter, cell, place, content);
    const double end = content.left() + content.width();
    x += drawAt(painter, place, x, end - x, font, textInk(cell), cell.text);
    if (!cell.muted.isEmpty())
        drawAt(painter, place, x, end - x, place.font, Role::Ink2,
               QStringLiteral(" · ") + cell.muted);
}

void paintNumber(QPainter& painter, const Cell& cell, const CellPlace& place) {
    const QFont font =
        struckThrough(numberFont(place.font, cell.strong), cell.change == CellChange::Removed);
    const SplitNumber number = splitNumber(cell.text);
    const int mark = decimalMarkX(place);
    const Role ink = textInk(cell);
    const double wholeWidth = widthOf(font, number.whole);
    constexpr double kAnyWidth = 10'000;
    drawAt(painter, place, mark - wholeWidth, kAnyWidth, font, ink, number.whole);
    drawAt(painter, place, mark, kAnyWidth, font, ink, number.fraction);
    const double unitX = mark + std::ceil(place.widths.fraction) + kUnitGapPx;
    drawAt(painter, place, unitX, kAnyWidth, unitFont(place.font), Role::Ink2, cell.unit);
    double left = mark - wholeWidth;
    if (!cell.before.isEmpty()) {
        const QString before = cell.before + u' ';
        left -= widthOf(place.font, before);
        drawAt(painter, place, left, kAnyWidth, place.font, ink, before);
    }
    if (cell.was.isEmpty()) return;
    QRect content = contentRect(cell, place);
    content.setRight(static_cast<int>(left) - kSpace2Px);
    drawWas(painter, cell, place, content);
}

void paintWay(QPainter& painter, const Cell& cell, const CellPlace& place) {
    const QRect content = contentRect(cell, place);
    const QFont font = resized(place.font, place.font.pixelSize() - 2);
    const double side = markSidePx(place.font);
    const double top = std::round(content.top() + (content.height() - side) / 2.0);
    paintMark(painter, cell.mark, QRectF{content.left() * 1.0, top, side, side}, place.shade);
    const double x = content.left() + side + kSpace2Px;
    const double used =
        drawAt(painter, place, x, content.right() + 1 - x, font, textInk(cell), cell.text);
    if (!cell.muted.isEmpty())
        drawAt(painter, place, x + used, content.right() + 1 - x - used, font, Role::Ink2,
               QStringLiteral(" · ") + cell.muted);
}

void paintShare(QPainter& painter, const Cell& cell, const CellPlace& place) {
    const QRect content = contentRect(cell, place);
    const double share = std::clamp(cell.share, 0.0, 1.0);
    if (share <= 0.0) return;
    const int width = std::max(1, static_cast<int>(std::lround(share * content.width())));
    painter.fillRect(content.left(), content.center().y() - kShareHeightPx / 2, width,
                     kShareHeightPx, inkIn(place, Role::Cobalt));
}

void paintNoData(QPainter& painter, const Cell& cell, const CellPlace& place) {
    const QString words = wordOf(Mark::NoData);
    const QRect content = contentRect(cell, place);
    const double width = widthOf(place.font, words);
    const double x = place.atRight ? content.right() + 1 - width : content.left();
    QRectF hatched = place.rect.adjusted(kPadPx, kPadPx, -kPadPx, -kPadPx - 1);
    if (place.atRight)
        hatched.setRight(x - kSpace1Px);
    else
        hatched.setLeft(x + width + kSpace1Px);
    paintHatch(painter, hatched, place.shade);
    drawAt(painter, place, x, width, place.font, Role::Ink2, words);
}

void paintFinding(QPainter& painter, const Cell& cell, const CellPlace& place) {
    if (cell.text.isEmpty()) return;
    const QPoint middle = contentRect(cell, place).center();
    painter.drawPixmap(
        middle.x() - kProblemSignPx / 2, middle.y() - kProblemSignPx / 2,
        signPixmap(Sign::Warning, inkIn(place, Role::Warning), kProblemSignPx, place.pixelRatio));
}

void paintContent(QPainter& painter, const Cell& cell, const CellPlace& place) {
    switch (cell.kind) {
        case CellKind::Text:
            return paintText(painter, cell, place);
        case CellKind::Number:
            return paintNumber(painter, cell, place);
        case CellKind::Way:
            return paintWay(painter, cell, place);
        case CellKind::Share:
            return paintShare(painter, cell, place);
        case CellKind::NoData:
            return paintNoData(painter, cell, place);
        case CellKind::Finding:
            return paintFinding(painter, cell, place);
    }
}

void paintFrame(QPainter& painter, const QRect& rect, const QColor& ink) {
    for (int i = 0; i < kFocusRingPx; ++i) {
        painter.setPen(ink);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect.adjusted(i, i, -i - 1, -i - 2));
    }
}

void paintProblem(QPainter& painter, const CellPlace& place) {
    const QColor ink = inkIn(place, Role::Warning);
    paintFrame(painter, place.rect, ink);
    const QRect rect = place.rect;
    const int x =
        place.atRight ? rect.left() + kSpace1Px : rect.right() - kProblemSignPx - kSpace1Px;
    painter.drawPixmap(x, rect.center().y() - kProblemSignPx / 2,
                       signPixmap(Sign::Warning, ink, kProblemSignPx, place.pixelRatio));
}

void paintChangeMark(QPainter& painter, const Cell& cell, const CellPlace& place) {
    drawAt(painter, place, place.rect.left() + kPadPx, kChangeMarkPx,
           recut(place.font, Weight::Semibold), Role::Ink, changeMark(cell.change));
}

}  // namespace

void paintCell(QPainter& painter, const Cell& cell, const CellPlace& place) {
    painter.save();
    painter.setClipRect(place.rect, Qt::IntersectClip);
    const QRect rect = place.rect;
    painter.fillRect(rect, inkIn(place, groundOf(cell, place)));
    painter.fillRect(rect.left(), rect.bottom(), rect.width(), 1, inkIn(place, Role::Hairline));
    paintContent(painter, cell, place);
    paintChangeMark(painter, cell, place);
    if (place.selected && place.firstColumn)
        painter.fillRect(rect.left(), rect.top(), kRimPx, rect.height(),
                         inkIn(place, Role::Cobalt));
    if (!cell.problem.isEmpty()) paintProblem(painter, place);
    if (place.focused) paintFrame(painter, rect, inkIn(place, Role::Cobalt));
    painter.restore();
}

int decimalMarkX(const CellPlace& place) {
    const double unit = place.widths.unit > 0 ? std::ceil(place.widths.unit) + kUnitGapPx : 0;
    return place.rect.right() + 1 - kPadPx -
           static_cast<int>(unit + std::ceil(place.widths.fraction));
}

int cellWidthPx(const Cell& cell, const CellPlace& place) {
    const QRect content = contentRect(cell, place);
    const int around = place.rect.width() - content.width();
    const double was = cell.was.isEmpty() ? 0 : widthOf(place.font, cell.was) + kSpace2Px;
    double inside =
        widthOf(cell.strong ? recut(place.font, Weight::Semibold) : place.font, plainText(cell));
    if (cell.kind == CellKind::Way) inside += markSidePx(place.font) + kSpace2Px;
    if (cell.kind == CellKind::Number)
        inside = place.widths.whole + std::ceil(place.widths.fraction) +
                 (place.widths.unit > 0 ? std::ceil(place.widths.unit) + kUnitGapPx : 0);
    if (cell.kind == CellKind::Number && !cell.problem.isEmpty()) inside += kProblemSignPx;
    return around + static_cast<int>(std::ceil(inside + was)) + 1;
}

}  // namespace nettare
