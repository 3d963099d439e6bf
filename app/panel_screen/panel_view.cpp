#include "app/panel_screen/panel_view.h"

#include <QScreen>
#include <QWindow>

#include <algorithm>

namespace nettare {

namespace {

/// Below it, a line of the panel is a row of grey dots.
constexpr double kLeastFit = 0.25;

}  // namespace

PanelView::PanelView(QWidget* parent) : QScrollArea{parent}, paper_{new PanelPaper} {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    setWidget(paper_);
    paper_->setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
}

void PanelView::show(PanelLayout layout) {
    paper_->show(std::move(layout));
    rescale();
}

void PanelView::setZoom(PanelZoom zoom) {
    zoom_ = zoom;
    rescale();
}

TrueSize PanelView::trueSize() const {
    return trueSizeOn(measureOf(*screen()));
}

void PanelView::rescale() {
    const double whole = trueSize().pxPerPoint;
    const QSizeF page = paper_->pagePt();
    double scale = zoom_ == PanelZoom::Double ? 2 * whole : whole;
    if (zoom_ == PanelZoom::Fit && !page.isEmpty()) {
        const int around = 2 * PanelPaper::marginPx();
        const QSize room = maximumViewportSize() - QSize{around, around};
        scale = std::max(kLeastFit,
                         std::min(room.width() / page.width(), room.height() / page.height()));
    }
    paper_->setScale(scale);
}

void PanelView::watchScreen() {
    disconnect(screenChange_);
    if (const QWindow* const handle = window()->windowHandle())
        screenChange_ = connect(handle, &QWindow::screenChanged, this, [this] {
            rescale();
            emit trueSizeChanged();
        });
}

void PanelView::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (zoom_ == PanelZoom::Fit) rescale();
}

void PanelView::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    watchScreen();
    rescale();
    emit trueSizeChanged();
}

}  // namespace nettare
