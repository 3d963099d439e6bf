#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/weigh.h"
#include "app/gui/window/demo_window.h"
#include "app/theme/pseudo_translator.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTableView>
#include <QTest>

namespace nettare {

namespace {

/// The strip asks what is left over; the choice is open above it.
QWidget& openChoice(DemoWindow& demo) {
    click(child<QPushButton>(demo.window(), "leftInBowl"));
    click(child<QPushButton>(demo.window(), "leftOver"));
    auto& popup = child<QWidget>(demo.window(), "leftOverPopup");
    REQUIRE(waitUntil([&] { return popup.isVisible(); }));
    QTest::qWait(50);
    return popup;
}

/// Everything optional and to be counted, so that all rules show.
void openAllRules(DemoWindow& demo) {
    openPatties(demo);
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setCurrentIndex(view.model()->index(3, 0));
    demo.window().commands().optionalLine->trigger();
    auto& makes = child<QLineEdit>(demo.window(), "makes");
    makes.setFocus();
    makes.selectAll();
    typeText(makes, QStringLiteral("10-14 patties"));
    pressKey(makes, Qt::Key_Return);
    QTest::qWait(50);
}

}  // namespace

TEST_CASE("what is left over and what counts have room for longer languages at 1280x800") {
    PseudoTranslator longer;
    QCoreApplication::installTranslator(&longer);
    {
        DemoWindow demo;
        QWidget& popup = openChoice(demo);
        for (const QWidget* kind : popup.findChildren<QRadioButton*>()) {
            click(child<QRadioButton>(popup, kind->objectName().toLatin1().constData()));
            QTest::qWait(20);
            CHECK(cutTexts(popup).join(u'\n').toStdString().empty());
            keepPicture(popup, QStringLiteral("longer-") + kind->objectName());
        }
        pressKey(popup, Qt::Key_Escape);
        recordShown(demo, QStringLiteral("12.5"));
        typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("20"));
        openAllRules(demo);
        click(child<QPushButton>(demo.window(), "leftInBowl"));
        QTest::qWait(100);
        CHECK(cutTexts(demo.window()).join(u'\n').toStdString().empty());
        CHECK(demo.window().width() == 1280);
        keepPicture(demo.window(), QStringLiteral("left-over-longer"));
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_CASE("what is left over is chosen above the strip, inside the screen") {
    DemoWindow demo{{1920, 1080}};
    demo.window().commands().dark->trigger();
    QWidget& popup = openChoice(demo);
    const QPoint foot = popup.mapToGlobal(QPoint{0, popup.height()});
    const QPoint strip = child<QPushButton>(demo.window(), "leftOver").mapToGlobal(QPoint{0, 0});
    CHECK(foot.y() <= strip.y());
    keepPicture(popup, QStringLiteral("left-over-popup-dark"));
    pressKey(popup, Qt::Key_Escape);
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("20"));
    keepPicture(demo.window(), QStringLiteral("left-over-dark"));
    openAllRules(demo);
    keepPicture(demo.window(), QStringLiteral("counts-dark"));
    demo.window().commands().light->trigger();
}

}  // namespace nettare
