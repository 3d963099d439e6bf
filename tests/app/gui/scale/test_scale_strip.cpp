#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/scale/weighing.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/line_rows.h"
#include "core/ledger/ledger_reading.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kOilLine = 2;
constexpr int kGarlic = 3;
constexpr int kWayColumn = static_cast<int>(LineColumn::Way);
constexpr int kGramsColumn = static_cast<int>(LineColumn::Grams);

void chooseLine(DemoWindow& demo, int row) {
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setCurrentIndex(view.model()->index(row, 0));
}

void choose(QComboBox& box, const QString& part) {
    for (int i = 0; i < box.count(); ++i)
        if (box.itemText(i).contains(part)) return box.setCurrentIndex(i);
    FAIL("no entry with " << part.toStdString());
}

void record(DemoWindow& demo, const QString& shown) {
    QSignalSpy recorded{&demo.kitchen(), &KitchenSession::recorded};
    auto& gross = child<QLineEdit>(demo.window(), "gross");
    typeText(gross, shown);
    pressKey(gross, Qt::Key_Return);
    REQUIRE(waitUntil([&] { return recorded.count() == 1; }));
    settle();
}

}  // namespace

TEST_CASE("recording a reading binds it to the line, and undo takes it off again") {
    DemoWindow demo;
    chooseLine(demo, kGarlic);
    CHECK(demo.lineText(kGarlic, kWayColumn).startsWith(QStringLiteral("table")));
    record(demo, QStringLiteral("5,2"));
    CHECK(demo.lineText(kGarlic, kWayColumn).startsWith(QStringLiteral("weighed")));
    demo.draft().undoStack().undo();
    CHECK(demo.lineText(kGarlic, kWayColumn).startsWith(QStringLiteral("table")));
}

TEST_CASE("what is weighed again takes the place of the weighing before, unless one adds it") {
    DemoWindow demo;
    chooseLine(demo, kOilLine);
    auto& addTo = child<QCheckBox>(demo.window(), "addTo");
    auto& note = child<QLabel>(demo.window(), "note");
    CHECK(addTo.isVisible());
    CHECK(addTo.text() == QStringLiteral("Add to 41 g"));
    CHECK_FALSE(addTo.isChecked());
    CHECK(note.text() == QStringLiteral("1 reading · last: 41 g · the next takes its place"));
    record(demo, QStringLiteral("30.0"));
    CHECK(note.text() == QStringLiteral("Recorded in place of 41 g; the ledger has both. Undo "
                                        "brings 41 g back."));
    CHECK(addTo.text() == QStringLiteral("Add to 30.0 g"));
    click(child<QPushButton>(demo.window(), "takeOff"));
    CHECK(addTo.text() == QStringLiteral("Add to 41 g"));
    addTo.setFocus();
    pressKey(addTo, Qt::Key_Space);
    CHECK(note.text() == QStringLiteral("1 reading · last: 41 g · the next is added"));
    record(demo, QStringLiteral("4.0"));
    CHECK(addTo.text() == QStringLiteral("Add to 45.0 g"));
    chooseLine(demo, kGarlic);
    CHECK_FALSE(addTo.isChecked());
    CHECK_FALSE(addTo.isVisible());
}

TEST_CASE("the dish weighed twice is not twice as heavy") {
    DemoWindow demo;
    click(child<QPushButton>(demo.window(), "cookedWeight"));
    const QString before = child<QPushButton>(demo.window(), "cookedWeight").text();
    CHECK(child<QCheckBox>(demo.window(), "addTo").isVisible());
    record(demo, QStringLiteral("758"));
    CHECK(child<QPushButton>(demo.window(), "cookedWeight").text() == before);
}

TEST_CASE("pieces that were not counted are asked for") {
    DemoWindow demo;
    chooseLine(demo, 0);
    choose(child<QComboBox>(demo.window(), "purpose"), QStringLiteral("weight of a piece"));
    auto& note = child<QLabel>(demo.window(), "note");
    CHECK_FALSE(child<QCheckBox>(demo.window(), "addTo").isVisible());
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("58.9"));
    CHECK(note.text() ==
          QStringLiteral("58.9 g each, but 9.8 g each before; see that the pieces are counted."));
    CHECK(child<QPushButton>(demo.window(), "record").isEnabled());
    auto& pieces = child<QLineEdit>(demo.window(), "pieces");
    pieces.selectAll();
    typeText(pieces, QStringLiteral("6"));
    CHECK(note.text().contains(QStringLiteral("6 readings")));
}

TEST_CASE("the net is the number less the tare, exactly") {
    DemoWindow demo;
    choose(child<QComboBox>(demo.window(), "tare"), QStringLiteral("steel bowl"));
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("271.1"));
    CHECK(child<QLabel>(demo.window(), "net").text() == QStringLiteral("58.9 g"));
}

TEST_CASE("a net over a vessel of the recipe names what weighed it empty") {
    DemoWindow demo;
    LedgerEntry bowl;
    bowl.kind = EntryKind::Vessel;
    bowl.id = freshUuid();
    bowl.at = "2026-05-23T12:00:00+02:00";
    bowl.vessel = "steel bowl";
    bowl.scale = "pocket scale";
    bowl.unit = "g";
    bowl.readability = Decimal{1, -1};
    bowl.shown = Decimal{2122, -1};
    bool kept = false;
    demo.kitchen().record({bowl}, std::nullopt, {}, &demo.window(),
                          [&kept](const Result<ChainedEntry>& entry) { kept = entry.has_value(); });
    REQUIRE(waitUntil([&kept] { return kept; }));
    // The strip reads the vessels anew when the ledger grew.
    for (int i = 0; i < 3; ++i) {
        demo.kitchen().settle();
        settle();
    }
    chooseLine(demo, kGarlic);
    choose(child<QComboBox>(demo.window(), "scale"), QStringLiteral("counter"));
    choose(child<QComboBox>(demo.window(), "tare"), QStringLiteral("steel bowl"));
    record(demo, QStringLiteral("222"));
    std::vector<ChainedEntry> entries;
    demo.kitchen().askKitchen(&demo.window(), [&entries](Kitchen& kitchen) {
        entries = *kitchen.ledger();
        return std::function<void()>{[] {}};
    });
    demo.kitchen().settle();
    REQUIRE_FALSE(entries.empty());
    const LedgerEntry& gross = entries.back().entry;
    CHECK(gross.vesselTare == Decimal(2122, -1));
    const auto empty = std::ranges::find_if(
        entries, [&gross](const ChainedEntry& each) { return each.entry.id == gross.tare; });
    REQUIRE(empty != entries.end());
    CHECK(empty->entry.kind == EntryKind::Vessel);
    CHECK(empty->entry.readability == Decimal(1, -1));
    // 1 g and 0.1 g, as the recipe has it: sqrt(1 + 0.01)/sqrt(12).
    const auto readings = readingsOf(entries, {});
    CHECK(roundingGrams(readings.back()) == Approx(0.29011).epsilon(0.0001));
}

TEST_CASE("what the scale shows now can be the tare of what comes next") {
    DemoWindow demo;
    auto& gross = child<QLineEdit>(demo.window(), "gross");
    typeText(gross, QStringLiteral("300.5"));
    click(child<QPushButton>(demo.window(), "useAsTare"));
    typeText(gross, QStringLiteral("342.0"));
    CHECK(child<QLabel>(demo.window(), "net").text() == QStringLiteral("41.5 g"));
}

TEST_CASE("a number that this scale cannot show is refused in its place") {
    DemoWindow demo;
    auto& gross = child<QLineEdit>(demo.window(), "gross");
    auto& button = child<QPushButton>(demo.window(), "record");
    for (const char* bad : {"12.34", "twelve", "1.2.3"}) {
        gross.clear();
        typeText(gross, QString::fromLatin1(bad));
        CHECK(gross.property("refused").toBool());
        CHECK_FALSE(button.isEnabled());
        CHECK_FALSE(child<QLabel>(demo.window(), "note").text().isEmpty());
    }
    gross.clear();
    typeText(gross, QStringLiteral("100"));
    choose(child<QComboBox>(demo.window(), "tare"), QStringLiteral("steel bowl"));
    CHECK_FALSE(button.isEnabled());
}

TEST_CASE("a coarse net is cautioned and can still be recorded") {
    DemoWindow demo;
    chooseLine(demo, kGarlic);
    choose(child<QComboBox>(demo.window(), "scale"), QStringLiteral("counter"));
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("5"));
    CHECK(child<QLabel>(demo.window(), "note").text().contains(QStringLiteral("20 steps")));
    CHECK(child<QPushButton>(demo.window(), "record").isEnabled());
}

TEST_CASE("a piece joins its series") {
    DemoWindow demo;
    chooseLine(demo, 0);
    choose(child<QComboBox>(demo.window(), "purpose"), QStringLiteral("weight of a piece"));
    CHECK(child<QLabel>(demo.window(), "note").text().contains(QStringLiteral("6 readings")));
    record(demo, QStringLiteral("9.9"));
    CHECK(demo.lineText(0, kWayColumn).contains(QStringLiteral("series, 7×")));
}

TEST_CASE("the cooked dish is weighed on the way that its text opens") {
    DemoWindow demo;
    click(child<QPushButton>(demo.window(), "leftInBowl"));
    CHECK(child<QComboBox>(demo.window(), "purpose")
              .currentText()
              .contains(QStringLiteral("left over")));
    CHECK(child<QLineEdit>(demo.window(), "gross").hasFocus());
    const QString before = demo.lineText(kGarlic, kGramsColumn);
    record(demo, QStringLiteral("5.0"));
    CHECK(demo.lineText(kGarlic, kGramsColumn) != before);
}

TEST_CASE("a weighing that other ways contradict says so in the row") {
    DemoWindow demo;
    chooseLine(demo, kOilLine);
    CHECK_FALSE(demo.lineText(kOilLine, kWayColumn).contains(QStringLiteral("says")));
    choose(child<QComboBox>(demo.window(), "scale"), QStringLiteral("counter"));
    record(demo, QStringLiteral("60"));
    CHECK(demo.lineText(kOilLine, kWayColumn).contains(QStringLiteral("label says 42 g")));
}

}  // namespace nettare
