#include "app/theme/enamel_style.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"

#include <QPainter>
#include <QPushButton>
#include <QStyleOption>
#include <QToolButton>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kIndicatorPx = 18;
constexpr double kChevronPx = 4;

bool has(const QStyleOption& option, QStyle::StateFlag flag) {
    return option.state.testFlag(flag);
}

QColor inkOf(const QStyleOption& option, Role role) {
    return colour(has(option, QStyle::State_Enabled) ? role : Role::Outline,
                  shadeOf(option.palette));
}

/// Ground and border of a field; the border is the ring where it has the focus.
void paintField(QPainter& painter, const QStyleOption& option) {
    const Shade shade = shadeOf(option.palette);
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool focused = enabled && has(option, QStyle::State_HasFocus);
    const double pen = focused ? kFocusRingPx : 1;
    const Role border = focused ? Role::Cobalt : enabled ? Role::Outline : Role::Hairline;
    painter.setPen(QPen{colour(border, shade), pen});
    painter.setBrush(colour(enabled ? Role::Raised : Role::Paper, shade));
    painter.drawRoundedRect(QRectF{option.rect}.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2),
                            kCornerPx, kCornerPx);
}

void paintChevron(QPainter& painter, const QRect& rect, bool up, const QColor& ink) {
    const QPointF middle = QRectF{rect}.center();
    const double rise = (up ? -1 : 1) * kChevronPx / 2;
    painter.setPen(QPen{ink, 1.75, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF{{middle + QPointF{-kChevronPx, -rise}, middle + QPointF{0, rise},
                                    middle + QPointF{kChevronPx, -rise}}});
}

QRectF indicatorBox(const QStyleOption& option) {
    QRectF box{0, 0, kIndicatorPx * 1.0, kIndicatorPx * 1.0};
    box.moveCenter(QRectF{option.rect}.center());
    return QRectF{box.toRect()}.adjusted(0.5, 0.5, -0.5, -0.5);
}

bool isMarked(const QStyleOption& option) {
    return has(option, QStyle::State_On) || has(option, QStyle::State_NoChange);
}

void setIndicatorColours(QPainter& painter, const QStyleOption& option) {
    const Shade shade = shadeOf(option.palette);
    const bool marked = isMarked(option);
    painter.setPen(marked ? inkOf(option, Role::Cobalt) : colour(Role::Outline, shade));
    painter.setBrush(marked ? inkOf(option, Role::Cobalt) : colour(Role::Raised, shade));
}

void paintCheckBox(QPainter& painter, const QStyleOption& option) {
    setIndicatorColours(painter, option);
    const QRectF box = indicatorBox(option);
    painter.drawRoundedRect(box, 3, 3);
    if (!isMarked(option)) return;
    painter.setPen(QPen{colour(Role::OnCobalt, shadeOf(option.palette)), 2, Qt::SolidLine,
                        Qt::RoundCap, Qt::RoundJoin});
    const QPointF at = box.topLeft();
    if (has(option, QStyle::State_NoChange))
        painter.drawLine(at + QPointF{4.5, 8.5}, at + QPointF{12.5, 8.5});
    else
        painter.drawPolyline(
            QPolygonF{{at + QPointF{4, 8.5}, at + QPointF{7.5, 12}, at + QPointF{13, 5.5}}});
}

void paintRadioButton(QPainter& painter, const QStyleOption& option) {
    setIndicatorColours(painter, option);
    const QRectF box = indicatorBox(option);
    painter.drawEllipse(box);
    if (!isMarked(option)) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(Role::OnCobalt, shadeOf(option.palette)));
    painter.drawEllipse(box.center(), 3.5, 3.5);
}

void paintFocusRing(QPainter& painter, const QStyleOption& option) {
    painter.setPen(QPen{colour(Role::Cobalt, shadeOf(option.palette)), kFocusRingPx * 1.0});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF{option.rect}.adjusted(1, 1, -1, -1), kCornerPx, kCornerPx);
}

}  // namespace

EnamelStyle::EnamelStyle() : QProxyStyle{QStringLiteral("Fusion")} {}

void EnamelStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                                QPainter* painter, const QWidget* widget) const {
    // The style sheet rings buttons at their border.
    if (element == PE_FrameFocusRect && (qobject_cast<const QPushButton*>(widget) != nullptr ||
                                         qobject_cast<const QToolButton*>(widget) != nullptr))
        return;
    void (*paint)(QPainter&, const QStyleOption&) = nullptr;
    if (element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck)
        paint = &paintCheckBox;
    if (element == PE_IndicatorRadioButton) paint = &paintRadioButton;
    if (element == PE_FrameFocusRect) paint = &paintFocusRing;
    if (paint == nullptr) {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paint(*painter, *option);
    painter->restore();
}

void EnamelStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                     QPainter* painter, const QWidget* widget) const {
    if (control != CC_ComboBox && control != CC_SpinBox) {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintField(*painter, *option);
    const auto place = [&](SubControl part) {
        return subControlRect(control, option, part, widget);
    };
    if (control == CC_ComboBox) {
        paintChevron(*painter, place(SC_ComboBoxArrow), false, inkOf(*option, Role::Ink2));
    } else if (const auto* const spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
               spin != nullptr && spin->buttonSymbols != QAbstractSpinBox::NoButtons) {
        paintChevron(*painter, place(SC_SpinBoxUp), true, inkOf(*option, Role::Ink2));
        paintChevron(*painter, place(SC_SpinBoxDown), false, inkOf(*option, Role::Ink2));
    }
    painter->restore();
}

QSize EnamelStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                    const QSize& size, const QWidget* widget) const {
    QSize asked = QProxyStyle::sizeFromContents(type, option, size, widget);
    if (type == CT_ComboBox || type == CT_SpinBox)
        asked.setHeight(std::max(asked.height(), kControlHeightPx));
    if (type == CT_CheckBox || type == CT_RadioButton)
        asked.setHeight(std::max(asked.height(), kSpace6Px));
    return asked;
}

int EnamelStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                             const QWidget* widget) const {
    switch (metric) {
        case PM_IndicatorWidth:
        case PM_IndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
            return kIndicatorPx;
        case PM_CheckBoxLabelSpacing:
        case PM_RadioButtonLabelSpacing:
            return kSpace2Px;
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

}  // namespace nettare
