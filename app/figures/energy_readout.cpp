#include "app/figures/energy_readout.h"

#include <QFontMetrics>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kNumberPx = 56;

QFont energyNumberFont() {
    return resized(figureFont(TypeSize::Reading, Weight::Bold), kNumberPx);
}

}  // namespace

EnergyReadout::EnergyReadout(QWidget* parent) : Readout{parent} {
    setAccessibleName(tr("Energy"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
}

void EnergyReadout::show(const QString& number, const QString& unit, const QString& before,
                         bool dimmed) {
    number_ = number;
    unit_ = unit;
    before_ = before;
    dimmed_ = dimmed;
    updateGeometry();
    valueChanged();
    update();
}

QString EnergyReadout::spokenValue() const {
    return QStringList{before_, number_, unit_}.join(QLatin1Char{' '}).trimmed();
}

QSize EnergyReadout::sizeHint() const {
    const QFontMetrics number{energyNumberFont()};
    const QFontMetrics words{typeFont(TypeSize::Section)};
    const int width = words.horizontalAdvance(before_ + unit_) + 3 * kSpace2Px +
                      number.horizontalAdvance(number_);
    return {width, number.ascent() + kSpace1Px};
}

void EnergyReadout::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && rect().contains(event->pos())) emit clicked();
}

void EnergyReadout::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    const QFont number = energyNumberFont(), words = typeFont(TypeSize::Section);
    const int baseline = QFontMetrics{number}.ascent() - kSpace1Px;
    int x = 0;
    const auto draw = [&](const QFont& font, Role ink, const QString& text) {
        if (text.isEmpty()) return;
        painter.setFont(font);
        painter.setPen(colour(ink, shade));
        painter.drawText(x, baseline, text);
        x += QFontMetrics{font}.horizontalAdvance(text) + kSpace2Px;
    };
    draw(words, Role::Ink2, before_);
    draw(number, dimmed_ ? Role::Ink2 : Role::Ink, number_);
    draw(words, Role::Ink2, unit_);
}

}  // namespace nettare
