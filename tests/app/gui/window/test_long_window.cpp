#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/theme/pseudo_translator.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>

namespace nettare {

TEST_CASE("the window has room for longer languages at 1280x800") {
    PseudoTranslator longer;
    QCoreApplication::installTranslator(&longer);
    {
        DemoWindow demo;
        child<QLineEdit>(demo.window(), "gross").setText(QStringLiteral("271.1"));
        QTest::qWait(100);
        INFO(cutTexts(demo.window()).join(u'\n').toStdString());
        CHECK(cutTexts(demo.window()).join(u'\n').toStdString().empty());
        keepPicture(demo.window(), QStringLiteral("sheet-longer"));
        demo.window().commands().keep->trigger();
        QTest::qWait(100);
        CHECK(cutTexts(demo.window()).join(u'\n').toStdString().empty());
        for (QAction* screen : {demo.window().commands().keys, demo.window().commands().about}) {
            screen->trigger();
            settle();
            CHECK(cutTexts(demo.window()).join(u'\n').toStdString().empty());
        }
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_CASE("pictures of what is empty, failing and typed") {
    DemoWindow demo;
    typeText(demo.edit(2, 0), QStringLiteral("some"));
    QTest::qWait(50);
    keepPicture(demo.window(), QStringLiteral("state-failing"));
    pressKey(*QApplication::focusWidget(), Qt::Key_Escape);
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("2 cloves gar"));
    QTest::qWait(50);
    keepPicture(demo.window(), QStringLiteral("state-completing"));
    entry.clear();
    demo.window().commands().newRecipe->trigger();
    REQUIRE(waitUntil([&] { return demo.draft().failure().has_value(); }));
    QTest::qWait(50);
    keepPicture(demo.window(), QStringLiteral("state-new-recipe"));
    CHECK(child<QLineEdit>(demo.window(), "newLine").isVisible());
}

}  // namespace nettare
