#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/window/kitchen_banner.h"
#include "app/window/saved_text.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace nettare {

namespace {

bool showsText(QWidget& root, const QString& part) {
    for (const QLabel* label : root.findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains(part)) return true;
    return false;
}

}  // namespace

TEST_CASE("the sample says that it is saved nowhere and offers to keep it") {
    DemoWindow demo;
    auto& banner = *demo.window().findChild<KitchenBanner*>();
    CHECK(banner.isVisible());
    CHECK(banner.text().startsWith(QStringLiteral("Sample, not saved")));
    CHECK(savedText(demo.kitchen()) ==
          QStringLiteral("draft, no revision yet · sample, not saved"));
}

TEST_CASE("keeping asks for a note inside the window, and Esc keeps nothing") {
    DemoWindow demo;
    auto& note = child<QLineEdit>(demo.window(), "revisionNote");
    CHECK_FALSE(note.isVisible());
    demo.window().commands().keep->trigger();
    CHECK(note.isVisible());
    CHECK(showsText(demo.window(), QStringLiteral("Note for revision 1")));
    pressKey(note, Qt::Key_Escape);
    CHECK_FALSE(note.isVisible());
    CHECK(demo.kitchen().revisions().empty());

    demo.window().commands().keep->trigger();
    typeText(note, QStringLiteral("first light"));
    pressKey(note, Qt::Key_Return);
    REQUIRE(waitUntil([&] { return demo.kitchen().revisions().size() == 1; }));
    CHECK(savedText(demo.kitchen()).startsWith(QStringLiteral("draft on revision 1")));
}

TEST_CASE("a draft without figures is not kept, and the window says why") {
    DemoWindow demo;
    typeText(demo.edit(2, 0), QStringLiteral("some"));
    demo.window().commands().keep->trigger();
    CHECK_FALSE(child<QLineEdit>(demo.window(), "revisionNote").isVisible());
    CHECK(showsText(demo.window(), QStringLiteral("cannot be kept")));
}

TEST_CASE("a screen is added with its action, and the action shows it") {
    DemoWindow demo;
    auto* action = new QAction{QStringLiteral("&Stove")};
    auto* stove = new QLabel{QStringLiteral("stove")};
    demo.window().addScreen(QStringLiteral("stove"), action, stove);
    CHECK(action->shortcut() == QKeySequence{QStringLiteral("Ctrl+6")});
    CHECK_FALSE(stove->isVisible());
    action->trigger();
    CHECK(stove->isVisible());
    CHECK(action->isChecked());
    demo.window().showScreen(QStringLiteral("sheet"));
    CHECK_FALSE(stove->isVisible());
}

TEST_CASE("the window stands where it stood before") {
    QSize size;
    {
        DemoWindow demo{{1400, 900}};
        size = demo.window().size();
        demo.window().close();
    }
    DemoWindow again{QSize{}};
    CHECK(again.window().size() == size);
}

TEST_CASE("pictures of the window") {
    for (const QSize size : {QSize{1280, 800}, QSize{1920, 1080}})
        for (const ShadeChoice shade : {ShadeChoice::Light, ShadeChoice::Dark}) {
            DemoWindow demo{size};
            const bool dark = shade == ShadeChoice::Dark;
            (dark ? demo.window().commands().dark : demo.window().commands().light)->trigger();
            child<QLineEdit>(demo.window(), "gross").setText(QStringLiteral("271.1"));
            QTest::qWait(100);
            CHECK(picture(demo.window()).size() == size);
            keepPicture(demo.window(),
                        QStringLiteral("sheet-%1-%2")
                            .arg(size.width())
                            .arg(dark ? QStringLiteral("dark") : QStringLiteral("light")));
            demo.window().commands().light->trigger();
        }
}

}  // namespace nettare
