#include "app/bench/weigh_display.h"

#include <QPainter>

#include <algorithm>

#include "app/bench/bench_type.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kLeastDigits_px = 46;  // half a degree of arc at a metre
constexpr int kLargeDigits_px = 120;
constexpr int kLeastUnit_px = kBenchTextPx;

int advanceOf(const QFont& font, const QString& text) {
    return QFontMetrics{font}.horizontalAdvance(text);
}

/// The largest size up to `most` at which the text is at most so wide, but never under `least`.
QFont fitting(QFont font, const QString& text, int width_px, int least) {
    while (font.pixelSize() > least && advanceOf(font, text) > width_px)
        font.setPixelSize(font.pixelSize() - 1);
    return font;
}

}  // namespace

WeighDisplay::WeighDisplay(QWidget* parent) : Readout{parent} {
    setObjectName(QStringLiteral("netDisplay"));
    setAccessibleName(tr("Net"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WeighDisplay::show(const QString& number, const QString& unit, const QString& note) {
    if (number == number_ && unit == unit_ && note == note_) return;
    number_ = number;
    unit_ = unit;
    note_ = note;
    valueChanged();
}

void WeighDisplay::setDigits(bool large) {
    digits_px_ = large ? kLargeDigits_px : static_cast<int>(TypeSize::Reading);
    updateGeometry();
    update();
}

QString WeighDisplay::spokenValue() const {
    return number_.isEmpty() ? tr("not known yet") : tr("%1 %2, %3").arg(number_, unit_, note_);
}

QSize WeighDisplay::sizeHint() const {
    return {kLeastDigits_px * 8, digits_px_};
}

QSize WeighDisplay::minimumSizeHint() const {
    return sizeHint();
}

void WeighDisplay::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    const QString number = number_.isEmpty() ? QStringLiteral("–") : number_;
    const QFont digits = fitting(resized(figureFont(TypeSize::Reading, Weight::Bold), digits_px_),
                                 number, width() * 3 / 5, kLeastDigits_px);
    const QFontMetrics metrics{digits};
    const int base = (height() + metrics.capHeight()) / 2;
    painter.setFont(digits);
    painter.setPen(colour(Role::Ink, shade));
    painter.drawText(0, base, number);
    const int left = metrics.horizontalAdvance(number) + kSpace4Px;
    painter.setPen(colour(Role::Ink2, shade));
    painter.setFont(fitting(figureFont(TypeSize::Unit), unit_, width() - left, kLeastUnit_px));
    painter.drawText(left, base, unit_);
    painter.setFont(benchFigures());
    const int top = base - metrics.capHeight();
    painter.drawText(left, top + QFontMetrics{benchFigures()}.capHeight(), note_);
}

}  // namespace nettare
