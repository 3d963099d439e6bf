#include "app/panel_screen/panel_view.h"

#include "app/gui/support/gui.h"
#include "app/panel/panel_fonts.h"
#include "app/panel/panel_layout.h"
#include "app/panel_screen/check_bar.h"
#include "app/theme/dress.h"
#include "panel/sample_panels.h"

#include <QApplication>
#include <QScrollBar>

#include <memory>

namespace nettare {

namespace {

PanelLayout skewerLayout() {
    return layOutPanel(skewerPanel(), panelTextWidth);
}

std::unique_ptr<PanelView> shownView(QSize size = {700, 900}) {
    auto view = std::make_unique<PanelView>();
    view->show(skewerLayout());
    showReady(*view, size);
    return view;
}

}  // namespace

TEST_CASE("a panel at 100 percent is as large as its paper") {
    const auto view = shownView();
    const PanelLayout layout = skewerLayout();
    const double pxPerPoint = view->trueSize().pxPerPoint;
    const QSize page =
        view->paper().size() - QSize{2 * PanelPaper::marginPx(), 2 * PanelPaper::marginPx()};
    CHECK(page.width() == qRound(layout.widthCpt / 100.0 * pxPerPoint));
    CHECK(page.height() == qRound(layout.heightCpt / 100.0 * pxPerPoint));
}

TEST_CASE("a panel is shown twice its size and fitted into the window") {
    const auto view = shownView({500, 400});
    const double whole = view->paper().scale();
    view->setZoom(PanelZoom::Double);
    CHECK(view->paper().scale() == Approx(2 * whole));
    view->setZoom(PanelZoom::Fit);
    settle();
    CHECK(view->paper().height() <= view->viewport()->height());
    CHECK(view->paper().height() > view->viewport()->height() - 3);
    CHECK_FALSE(view->verticalScrollBar()->isVisible());
}

TEST_CASE("a panel larger than its view is scrolled by keys") {
    const auto view = shownView({500, 300});
    view->paper().setFocus();
    pressKey(view->paper(), Qt::Key_PageDown);
    CHECK(view->verticalScrollBar()->value() > 100);
}

TEST_CASE("the panel's paper is white and its ink black by night as well") {
    auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
    dress(application, Shade::Dark);
    const auto view = shownView();
    const QImage night = picture(view->paper());
    keepPicture(*view, QStringLiteral("panel-view-dark"));
    dress(application, Shade::Light);
    settle();
    const QImage day = picture(view->paper());
    const int inside = PanelPaper::marginPx() + 1;
    const QRect page = day.rect().adjusted(inside, inside, -inside, -inside);
    CHECK(day.copy(page) == night.copy(page));
    CHECK(day.pixelColor(page.topLeft()) == QColor{Qt::white});
    CHECK(pixelsOf(day, Qt::black) > 500);
    keepPicture(*view, QStringLiteral("panel-view-light"));
}

TEST_CASE("a screen reader hears the panel's lines in the order they are read") {
    const auto view = shownView();
    const Spoken spoken = spokenOf(view->paper());
    CHECK(spoken.name == QStringLiteral("Nutrition panel"));
    const QStringList lines = spoken.description.split(u'\n');
    const Panel panel = skewerPanel();
    REQUIRE(lines.size() > 10);
    CHECK(lines.front().toStdString() == panel.title);
    const auto place = [&](const std::string& text) {
        return spoken.description.indexOf(QString::fromStdString(text));
    };
    CHECK(place(panel.servings) >= 0);
    CHECK(place(panel.servings) < place(panel.caloriesName));
    CHECK(place(panel.caloriesName) < place(panel.lines.front().text()));
    CHECK(place(panel.lines.front().text()) < place(panel.lines.back().text()));
    // The caution may wrap; its first words are enough.
    CHECK(place(panel.caution.substr(0, 12)) > place(panel.lines.back().text()));
}

TEST_CASE("the check bar is 50 mm long") {
    CheckBar bar;
    bar.setScale(96.0 / 72);
    CHECK(bar.lengthPx() == Approx(50 / 25.4 * 96));
    showReady(bar, bar.sizeHint());
    CHECK_FALSE(spokenOf(bar).name.isEmpty());
}

}  // namespace nettare
