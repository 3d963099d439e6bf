#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/shelf/shelf_model.h"

#include <QLineEdit>
#include <QListView>
#include <QPushButton>

namespace nettare {

TEST_CASE("the shelf finds a recipe by the words in it and Enter opens it") {
    DemoWindow demo;
    auto& field = child<QLineEdit>(demo.window(), "findRecipeField");
    auto& list = child<QListView>(demo.window(), "recipes");
    pressKey(demo.window(), Qt::Key_F, Qt::ControlModifier);
    CHECK(field.hasFocus());
    typeText(field, QStringLiteral("beetroot"));
    REQUIRE(waitUntil([&] { return list.model()->rowCount() == 2; }));
    CHECK(list.model()->index(1, 0).data().toString() ==
          QStringLiteral("Barley & beetroot patties"));
    pressKey(field, Qt::Key_Return);
    REQUIRE(waitUntil([&] {
        const Json* title = demo.draft().document().find("title");
        return title->text()->starts_with("Barley");
    }));
    pressKey(field, Qt::Key_Escape);
    REQUIRE(waitUntil([&] { return list.model()->rowCount() == 3; }));
}

TEST_CASE("words that no recipe holds leave one way out") {
    DemoWindow demo;
    auto& field = child<QLineEdit>(demo.window(), "findRecipeField");
    typeText(field, QStringLiteral("zzz"));
    REQUIRE(waitUntil([&] { return demo.kitchen().shelf().empty(); }));
    settle();
    CHECK_FALSE(child<QListView>(demo.window(), "recipes").isVisible());
    int offered = 0;
    for (QPushButton* button : field.parentWidget()->findChildren<QPushButton*>())
        if (button->isVisible()) {
            ++offered;
            click(*button);
        }
    CHECK(offered == 1);
    REQUIRE(waitUntil([&] { return demo.kitchen().shelf().size() == 2; }));
}

TEST_CASE("an empty kitchen begins with one action") {
    DemoWindow demo{{1280, 800}, false};
    settle();
    QPushButton* begin = nullptr;
    for (QPushButton* button : demo.window().findChildren<QPushButton*>())
        if (button->isVisible() && button->text() == QStringLiteral("New recipe")) begin = button;
    REQUIRE(begin != nullptr);
    click(*begin);
    REQUIRE(waitUntil([&] { return demo.kitchen().draft() != nullptr; }));
    CHECK(demo.draft().failure().has_value());
}

}  // namespace nettare
