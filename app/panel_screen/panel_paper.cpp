#include "app/panel_screen/panel_paper.h"

#include "app/panel/paint_panel.h"
#include "app/panel_screen/panel_words.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

#include <QPainter>

namespace nettare {

namespace {

constexpr double kPaperCentipoints = 100;
constexpr int kPaperMarginPx = kSpace1Px;

}  // namespace

PanelPaper::PanelPaper(QWidget* parent) : QWidget{parent} {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(tr("Nutrition panel"));
}

void PanelPaper::show(PanelLayout layout) {
    layout_ = std::move(layout);
    setAccessibleDescription(panelWordsOf(layout_).join(u'\n'));
    resize(sizeHint());
    updateGeometry();
    update();
}

void PanelPaper::setScale(double pxPerPoint) {
    pxPerPoint_ = pxPerPoint;
    resize(sizeHint());
    updateGeometry();
    update();
}

QSizeF PanelPaper::pagePt() const {
    return {layout_.widthCpt / kPaperCentipoints, layout_.heightCpt / kPaperCentipoints};
}

int PanelPaper::marginPx() {
    return kPaperMarginPx;
}

QSize PanelPaper::sizeHint() const {
    const QSizeF page = pagePt() * pxPerPoint_;
    return page.toSize() + QSize{2 * kPaperMarginPx, 2 * kPaperMarginPx};
}

void PanelPaper::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    const QRect page =
        rect().adjusted(kPaperMarginPx, kPaperMarginPx, -kPaperMarginPx, -kPaperMarginPx);
    painter.fillRect(page.adjusted(-1, -1, 1, 1), colour(Role::Hairline, shade));
    if (hasFocus()) {
        painter.setPen(QPen{colour(Role::Cobalt, shade), kFocusRingPx});
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
    painter.fillRect(page, Qt::white);
    painter.translate(page.topLeft());
    painter.scale(pxPerPoint_ / kPaperCentipoints, pxPerPoint_ / kPaperCentipoints);
    paintPanel(painter, layout_);
}

void PanelPaper::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void PanelPaper::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace nettare
