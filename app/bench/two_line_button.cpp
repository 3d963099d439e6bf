#include "app/bench/two_line_button.h"

#include <QApplication>
#include <QPainter>
#include <QStyleOptionButton>
#include <QStylePainter>

#include <algorithm>

#include "app/bench/bench_type.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/widgets/plain_tip.h"

namespace nettare {

namespace {

constexpr int kLeastTextWidth_px = 120;
constexpr int kRoundingWidth_px = 2;  // whole pixels measured fall short of what elidedText() needs

}  // namespace

TwoLineButton::TwoLineButton(QWidget* parent) : QPushButton{parent} {
    setFont(benchFont());
    setProperty("touch", true);
    setAutoDefault(false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TwoLineButton::setTexts(const QString& main, const QString& detail) {
    if (main == main_ && detail == detail_) return;
    main_ = main;
    detail_ = detail;
    const QString whole = detail.isEmpty() ? main : tr("%1, %2").arg(main, detail);
    setAccessibleName(whole);
    setToolTip(plainTip(whole));
    updateGeometry();
    update();
}

int TwoLineButton::textHeight_px() const {
    const int line = QFontMetrics{benchFont()}.height();
    return detail_.isEmpty() ? line : 2 * line;
}

QSize TwoLineButton::sizeHint() const {
    const int text = std::max(QFontMetrics{benchFont(Weight::Semibold)}.horizontalAdvance(main_),
                              QFontMetrics{benchFont()}.horizontalAdvance(detail_));
    return {text + kRoundingWidth_px + 2 * kSpace4Px,
            std::max(kBenchTargetPx, textHeight_px() + 2)};
}

QSize TwoLineButton::minimumSizeHint() const {
    return {kLeastTextWidth_px, sizeHint().height()};
}

void TwoLineButton::paintEvent(QPaintEvent*) {
    QStylePainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);
    // A quiet button has no ground of its own to tell the shade by.
    const Shade shade = shadeOf(QApplication::palette());
    const QRect place = rect().adjusted(kSpace4Px, 0, -kSpace4Px, 0);
    const int height = textHeight_px();
    const QRect texts{place.left(), (this->height() - height) / 2, place.width(), height};
    const auto line = [&](const QRect& where, const QFont& font, Role ink, const QString& text) {
        painter.setFont(font);
        painter.setPen(colour(isEnabled() ? ink : Role::Outline, shade));
        painter.drawText(where,
                         static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter) | Qt::TextSingleLine,
                         QFontMetrics{font}.elidedText(text, Qt::ElideRight, where.width()));
    };
    QRect first = texts;
    if (!detail_.isEmpty()) {
        first.setHeight(height / 2);
        line(texts.adjusted(0, height / 2, 0, 0), benchFont(), Role::Ink2, detail_);
    }
    line(first, benchFont(Weight::Semibold), Role::Ink, main_);
}

}  // namespace nettare
