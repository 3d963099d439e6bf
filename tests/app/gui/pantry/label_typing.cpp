#include "app/gui/pantry/label_typing.h"

#include "app/gui/support/gui.h"

#include <QApplication>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace nettare {

void LabelTyping::openForm() {
    press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    REQUIRE(child<QLineEdit>(pantry_.screen(), "labelName").isVisible());
}

void LabelTyping::write(const QString& text) {
    QWidget* const focus = QApplication::focusWidget();
    REQUIRE(focus != nullptr);
    typeText(*focus, text);
    letters_ += text.size();
}

void LabelTyping::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QWidget* const focus = QApplication::focusWidget();
    REQUIRE(focus != nullptr);
    pressKey(*focus, key, modifiers);
    ++keys_;
    settle();
}

void LabelTyping::put(const char* field, const QString& text) {
    auto& target = child<QLineEdit>(pantry_.screen(), field);
    target.setFocus();
    target.selectAll();
    // No key types these.
    const bool keys = std::ranges::all_of(text, [](QChar each) { return each.unicode() < 0x80; });
    keys ? typeText(target, text) : target.insert(text);
}

QString LabelTyping::standsFor(const char* field) {
    auto& target = child<QLineEdit>(pantry_.screen(), field);
    auto* const grid = qobject_cast<QGridLayout*>(target.parentWidget()->layout());
    REQUIRE(grid != nullptr);
    int row = 0, column = 0, rows = 0, columns = 0;
    grid->getItemPosition(grid->indexOf(&target), &row, &column, &rows, &columns);
    const auto* said = qobject_cast<QLabel*>(grid->itemAtPosition(row, 3)->widget());
    REQUIRE(said != nullptr);
    return said->text();
}

void LabelTyping::writeYoghurt(const QString& carbohydrate) {
    put("labelName", QStringLiteral("Thick yoghurt"));
    put("labelHousehold", QStringLiteral("1 cup"));
    put("labelSize", QStringLiteral("170"));
    put("label_ENERC_KCAL", QStringLiteral("100"));
    put("label_FAT", QStringLiteral("0"));
    put("label_CHOCDF", carbohydrate);
    put("label_PROCNT", QStringLiteral("18"));
    put("label_NA", QStringLiteral("65"));
    enter();
}

ReopenedPantry::ReopenedPantry(const QString& path) {
    auto kitchen = Kitchen::open(path.toStdString(), KitchenAccess::Write);
    REQUIRE(kitchen);
    session_ = std::make_unique<KitchenSession>(std::move(*kitchen),
                                                TablePlaces{NETTARE_STARTER_TABLE}, false);
    screen_ = std::make_unique<PantryScreen>(*session_);
    showReady(*screen_, {1280, 800});
    session_->settle();
    settle();
}

}  // namespace nettare
