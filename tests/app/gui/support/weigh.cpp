#include "app/gui/support/weigh.h"

#include "app/gui/support/gui.h"

#include <QLineEdit>
#include <QSignalSpy>

namespace nettare {

void recordShown(DemoWindow& demo, const QString& shown) {
    QSignalSpy recorded{&demo.kitchen(), &KitchenSession::recorded};
    auto& gross = child<QLineEdit>(demo.window(), "gross");
    gross.clear();
    typeText(gross, shown);
    pressKey(gross, Qt::Key_Return);
    REQUIRE(waitUntil([&] { return recorded.count() == 1; }));
    settle();
}

void openPatties(DemoWindow& demo) {
    for (const ShelvedRecipe& recipe : demo.kitchen().shelf())
        if (!recipe.title.starts_with("Charred"))
            return demo.open(QString::fromStdString(recipe.id));
}

}  // namespace nettare
