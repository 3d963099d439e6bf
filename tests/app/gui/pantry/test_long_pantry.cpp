#include "app/gui/pantry/label_typing.h"
#include "app/gui/pantry/pantry_window.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/theme/pseudo_translator.h"
#include "app/theme/user_settings.h"

#include <QCoreApplication>
#include <QLabel>
#include <QListView>
#include <QPushButton>

namespace nettare {

namespace {

class LongerPantry {
public:
    LongerPantry() { QCoreApplication::installTranslator(&translator_); }
    ~LongerPantry() { QCoreApplication::removeTranslator(&translator_); }
    LongerPantry(const LongerPantry&) = delete;
    LongerPantry& operator=(const LongerPantry&) = delete;

private:
    PseudoTranslator translator_;
};

/// What is cut in the pantry, and a picture of it.
std::string cutNow(PantryWindow& pantry, const char* name) {
    pantry.rest();
    keepPicture(pantry.demo().window(), QString::fromLatin1(name));
    return cutTexts(pantry.screen()).join(u'\n').toStdString();
}

void checkUncut(PantryWindow& pantry, const char* picture) {
    const std::string cut = cutNow(pantry, picture);
    INFO(cut);
    CHECK(cut.empty());
}

}  // namespace

TEST_CASE("the pantry has room for longer languages at 1280x800") {
    const LongerPantry longer;
    PantryWindow pantry;
    CHECK(cutNow(pantry, "pantry-browse-longer").empty());
    pantry.addOwn(QStringLiteral("Rye flour"), 330);
    pantry.addOwn(QStringLiteral("Flour of rye"), 330);
    pantry.search(QStringLiteral("rye"));
    CHECK(cutNow(pantry, "pantry-food-longer").empty());
    click(child<QPushButton>(pantry.screen(), "askMerge"));
    CHECK(cutNow(pantry, "pantry-merge-longer").empty());
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    click(child<QPushButton>(pantry.screen(), "dropOwnFood"));
    auto& list = child<QListView>(pantry.screen(), "foods");
    list.setFocus();
    for (int i = 0; i < 3; ++i) {
        list.setCurrentIndex(list.model()->index(i, 0));
        pressKey(list, Qt::Key_Space);
    }
    click(child<QPushButton>(pantry.screen(), "compareFoods"));
    CHECK(cutNow(pantry, "pantry-compare-longer").empty());
    pantry.search(QStringLiteral("qwxz"));
    CHECK(cutNow(pantry, "pantry-nothing-longer").empty());
    click(child<QPushButton>(pantry.screen(), "newOwnFood"));
    CHECK(cutNow(pantry, "pantry-form-longer").empty());
}

TEST_CASE("the form of a label has room for longer languages at 1280x800") {
    const LongerPantry longer;
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    checkUncut(pantry, "label-empty-longer");
    typing.writeYoghurt(QStringLiteral("60"));
    typing.save();
    checkUncut(pantry, "label-finding-longer");
    typing.press(Qt::Key_F9, Qt::ShiftModifier);
    typing.save();
    checkUncut(pantry, "label-card-longer");
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    typing.put("labelSize", QStringLiteral("170 mL"));
    checkUncut(pantry, "label-pack-longer");
}

TEST_CASE("hostile names of own foods are inert in the pantry") {
    PantryWindow pantry;
    const QString markup = QStringLiteral("<b>bold</b><img src=\"x\"> & <script>");
    pantry.addOwn(markup, 330);
    pantry.search(QStringLiteral("bold"));
    CHECK(pantry.shown() == markup);
    CHECK(child<QLabel>(pantry.screen(), "foodName").textFormat() == Qt::PlainText);
    pantry.addOwn(QString{190, u'W'}, 330);
    pantry.search(QString{20, u'W'});
    CHECK(pantry.shown().size() == 190);
    keepPicture(pantry.demo().window(), QStringLiteral("pantry-hostile"));
    CHECK(pantry.screen().width() <= 1280);
}

}  // namespace nettare
