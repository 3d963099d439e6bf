#include "app/bench/equipment_panel.h"
#include "app/gui/bench/bench_kitchen.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

namespace nettare {

namespace {

struct ShownEquipment {
    ShownEquipment() : panel{kitchen.desk()} { showReady(panel, {1000, 900}); }

    void type(const char* field, const char* text) {
        auto& edit = child<QLineEdit>(panel, field);
        edit.clear();
        typeText(edit, QString::fromUtf8(text));
    }
    void press(const char* name) {
        child<QPushButton>(panel, name).click();
        kitchen.rest();
        settle();
    }
    bool says(const char* text) {
        for (const auto* label : panel.findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(QString::fromUtf8(text))) return true;
        return false;
    }

    BenchKitchen kitchen;
    EquipmentPanel panel;
};

}  // namespace

TEST_CASE("the panel shows each scale with its steps and its last check") {
    ShownEquipment shown;
    CHECK(shown.says("counter · weighed on now"));
    CHECK(shown.says("steps of 0.1 g, up to 3000 g"));
    CHECK(shown.says("Never checked with a known mass"));
    CHECK(unnamedFocusables(shown.panel).isEmpty());
    CHECK(cutTexts(shown.panel).isEmpty());
}

TEST_CASE("a scale is added, and what was typed stays where it is refused") {
    ShownEquipment shown;
    CHECK_FALSE(child<QLineEdit>(shown.panel, "newScaleName").isVisible());
    shown.press("addScale");
    shown.type("newScaleName", "counter");
    shown.type("newScaleStep", "0.01");
    shown.press("newScaleButton");
    CHECK(shown.says("There is a scale “counter” already"));
    CHECK(child<QLineEdit>(shown.panel, "newScaleStep").text() == QStringLiteral("0.01"));
    shown.type("newScaleName", "fine");
    pressKey(child<QLineEdit>(shown.panel, "newScaleName"), Qt::Key_Return);
    shown.kitchen.rest();
    REQUIRE(shown.kitchen.desk().equipment().scales.size() == 2);
    CHECK(shown.says("fine · weighed on now"));
    CHECK(child<QLineEdit>(shown.panel, "newScaleStep").text().isEmpty());
}

TEST_CASE("a check that fails says that the readings since the last good one are in doubt") {
    ShownEquipment shown;
    shown.press("checkOpen");
    shown.type("checkMass", "200");
    shown.type("checkShown", "200.0");
    shown.press("checkScaleButton");
    CHECK(shown.says("Good: showed 200.0 g for 200 g"));
    shown.press("checkOpen");
    shown.type("checkMass", "200");
    shown.type("checkShown", "198.75");
    shown.press("checkScaleButton");
    CHECK(shown.says("The scale shows steps of 0.1 g, and 198.75 g is none"));
    shown.type("checkShown", "198.7");
    shown.press("checkScaleButton");
    CHECK(shown.says("Failed: showed 198.7 g for 200 g"));
    CHECK(shown.says("since its last good check is marked as in doubt"));
    keepScreenPictures(shown.panel, QStringLiteral("equipment"));
}

TEST_CASE("an empty vessel is kept with its tare, and weighed anew under the same name") {
    ShownEquipment shown;
    for (const char* const tare : {"212.2", "212.4"}) {
        shown.type("newVesselName", "steel bowl");
        shown.type("newVesselTare", tare);
        shown.press("newVesselButton");
    }
    REQUIRE(shown.kitchen.desk().equipment().vessels.size() == 1);
    CHECK(shown.kitchen.desk().equipment().vessels[0].tare.text() == "212.4");
    CHECK(shown.says("212.4 g, weighed empty"));
}

TEST_CASE("Escape closes an open check first, then leaves the scales") {
    ShownEquipment shown;
    QSignalSpy left{&shown.panel, &EquipmentPanel::left};
    shown.press("checkOpen");
    pressKey(child<QLineEdit>(shown.panel, "checkMass"), Qt::Key_Escape);
    settle();
    CHECK(shown.panel.findChild<QLineEdit*>(QStringLiteral("checkMass")) == nullptr);
    CHECK(left.count() == 0);
    pressKey(shown.panel, Qt::Key_Escape);
    CHECK(left.count() == 1);
}

}  // namespace nettare
