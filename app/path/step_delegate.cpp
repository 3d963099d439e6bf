#include "app/path/step_delegate.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <functional>

#include "app/path/path_model.h"
#include "app/path/path_texts.h"
#include "app/path/wrapped_text.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/way_mark.h"

namespace nettare {

namespace {

constexpr int kCardGapPx = 3;  // above and below each card
constexpr int kAroundPx = 9;   // within it
constexpr int kMarkZonePx = 36;
constexpr double kLeastNumbersPx = 120, kMostNumbersPx = 208;

QFont valueFont() {
    return figureFont(TypeSize::Section, Weight::Bold);
}

QFont spreadFont() {
    return figureFont(TypeSize::Body);
}

double advance(const QFont& font, const QString& text) {
    return QFontMetricsF{font}.horizontalAdvance(text);
}

/// "± 7.0", or the interval that stands in its place.
QString spreadText(const PathStep& step, const QString& interval) {
    if (!interval.isEmpty()) return QStringLiteral("  ") + interval;
    if (step.plusMinus.empty()) return {};
    return QStringLiteral(" ± ") + QString::fromStdString(step.plusMinus);
}

Mark markOfStep(const PathStep& step) {
    if (step.kind == PathKind::Missing) return Mark::NoData;
    return step.way ? markOf(*step.way) : Mark::None;
}

void paintCard(QPainter& painter, const QRect& card, Shade shade, bool current, bool focused) {
    painter.fillRect(card, colour(Role::Raised, shade));
    const int strokes = focused ? kFocusRingPx : 1;
    painter.setPen(colour(current ? Role::Cobalt : Role::Hairline, shade));
    painter.setBrush(Qt::NoBrush);
    for (int i = 0; i < strokes; ++i) painter.drawRect(card.adjusted(i, i, -i - 1, -i - 1));
    if (current)
        painter.fillRect(card.left(), card.top(), kRimPx, card.height(),
                         colour(Role::Cobalt, shade));
}

}  // namespace

struct StepDelegate::Parts {
    QString value, spread;
    QStringList words, more;
    double wordsX = 0;  ///< from the left of the card
    double heightPx = 0;
};

StepDelegate::StepDelegate(const PathModel& model, QObject* parent)
    : QStyledItemDelegate{parent}, model_{model} {}

double StepDelegate::numberWidth(const QModelIndex& index) const {
    const PathStep& step = model_.step(index);
    return advance(valueFont(), stepValue(step)) +
           advance(spreadFont(), spreadText(step, model_.intervalOf(index)));
}

void StepDelegate::measureNumbers() {
    double widest = kLeastNumbersPx;
    const std::function<void(const QModelIndex&)> measure = [&](const QModelIndex& parent) {
        for (int row = 0; row < model_.rowCount(parent); ++row) {
            const QModelIndex index = model_.index(row, 0, parent);
            widest = std::max(widest, numberWidth(index));
            measure(index);
        }
    };
    measure({});
    numbersPx_ = std::ceil(std::min(widest, kMostNumbersPx));
}

void StepDelegate::setRoom(int widthPx, int indentPx) {
    roomPx_ = widthPx;
    indentPx_ = indentPx;
}

StepDelegate::Parts StepDelegate::partsOf(const QModelIndex& index, int widthPx) const {
    const PathStep& step = model_.step(index);
    Parts parts;
    parts.value = stepValue(step);
    parts.spread = spreadText(step, model_.intervalOf(index));
    if (parts.value.isEmpty()) parts.spread = wordOf(Mark::NoData);
    const double numbers = std::max(numbersPx_, numberWidth(index));
    parts.wordsX = kMarkZonePx + numbers + kSpace4Px;
    const double room = widthPx - parts.wordsX - kSpace3Px;
    parts.words = wrappedLines(stepWords(step), typeFont(TypeSize::Body), room);
    // What the figure itself is of stands in the head of the screen.
    if (!step.more.empty() && index.parent().isValid())
        parts.more =
            wrappedLines(QString::fromStdString(step.more), typeFont(TypeSize::Body), room);
    const double lines = static_cast<double>(parts.words.size() + parts.more.size());
    parts.heightPx = 2 * kAroundPx + std::max(1.0, lines) * lineStep(typeFont(TypeSize::Body));
    return parts;
}

QSize StepDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    int depth = 0;
    for (QModelIndex above = index; above.isValid(); above = above.parent()) ++depth;
    const int width = roomPx_ - depth * indentPx_;
    return {width, static_cast<int>(partsOf(index, width).heightPx) + 2 * kCardGapPx + 2};
}

void StepDelegate::paintNumber(QPainter& painter, const Parts& parts, const QModelIndex& index,
                               double right, double baseline, Shade shade) const {
    const double spread = advance(spreadFont(), parts.spread);
    painter.setFont(spreadFont());
    painter.setPen(colour(Role::Ink2, shade));
    painter.drawText(QPointF{right - spread, baseline}, parts.spread);
    painter.setFont(valueFont());
    const bool partial = model_.step(index).kind == PathKind::Missing;
    painter.setPen(colour(partial ? Role::Warning : Role::Ink, shade));
    painter.drawText(QPointF{right - spread - advance(valueFont(), parts.value), baseline},
                     parts.value);
}

void StepDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const QRect card = option.rect.adjusted(0, kCardGapPx, 0, -kCardGapPx);
    // The view's own palette has no ground to tell the shade by.
    const Shade shade = shadeOf(QGuiApplication::palette());
    const Parts parts = partsOf(index, card.width());
    const bool current = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    paintCard(*painter, card, shade, current,
              current && option.state.testFlag(QStyle::State_HasFocus));
    const QFont body = typeFont(TypeSize::Body);
    const double side = markSidePx(body);
    const double baseline = std::round(card.top() + 1 + kAroundPx + QFontMetricsF{body}.ascent());
    paintMark(*painter, markOfStep(model_.step(index)),
              QRectF{card.left() + kSpace4Px * 1.0, baseline - side, side, side}, shade);
    paintNumber(*painter, parts, index, card.left() + parts.wordsX - kSpace4Px, baseline, shade);
    painter->setPen(colour(Role::Ink, shade));
    const double next =
        drawLines(*painter, parts.words, body, {card.left() + parts.wordsX, baseline});
    painter->setPen(colour(Role::Ink2, shade));
    drawLines(*painter, parts.more, body, {card.left() + parts.wordsX, next});
    painter->restore();
}

}  // namespace nettare
