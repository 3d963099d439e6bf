#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/session/now.h"
#include "app/sheet/line_rows.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include "app/scale/weighing.h"
#include "core/edit/series_edits.h"

#include <cmath>

namespace nettare {

namespace {

constexpr int kPrawnLine = 0;
constexpr int kGarlicLine = 3;
constexpr int kWayAt = static_cast<int>(LineColumn::Way);
constexpr int kGramsAt = static_cast<int>(LineColumn::Grams);

/// Opens the bar for a line; answers its list of offers.
QComboBox& offersFor(DemoWindow& demo, int row) {
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setCurrentIndex(view.model()->index(row, 0));
    demo.window().commands().fromLedger->trigger();
    auto& button = child<QPushButton>(demo.window(), "bindWeigh");
    REQUIRE(waitUntil([&] { return button.isVisible(); }));
    settle();
    return child<QComboBox>(demo.window(), "bindOffer");
}

void take(DemoWindow& demo, QComboBox& offers, const QString& part) {
    for (int i = 0; i < offers.count(); ++i)
        if (offers.itemText(i).contains(part)) {
            offers.setCurrentIndex(i);
            click(child<QPushButton>(demo.window(), "bindTake"));
            settle();
            return;
        }
    FAIL("no offer with " << part.toStdString());
}

/// A clove on the bench's scale, zeroed with nothing on it.
LedgerEntry clove(const std::string& grams) {
    LedgerEntry entry;
    entry.id = freshUuid();
    entry.at = now();
    entry.indication = entry.id;
    entry.shown = *Decimal::read(grams);
    entry.unit = "g";
    entry.readability = *Decimal::read("0.1");
    entry.scale = "pocket scale";
    entry.what = "garlic";
    entry.vessel = "board";
    entry.vesselTare = *Decimal::read("0.0");
    entry.series = SeriesMark{SeriesKind::PerPiece, "clove", {}, ""};
    return entry;
}

void weighCloves(DemoWindow& demo, const std::vector<std::string>& grams) {
    std::vector<LedgerEntry> entries;
    entries.reserve(grams.size());
    for (const std::string& each : grams) entries.push_back(clove(each));
    bool done = false;
    demo.kitchen().record(entries, std::nullopt, {}, &demo.window(),
                          [&](const Result<ChainedEntry>& last) { done = last.has_value(); });
    REQUIRE(waitUntil([&] { return done; }));
    settle();
}

}  // namespace

TEST_CASE("a line takes its weight from a series of the ledger, and undo brings back what was",
          "[bind]") {
    DemoWindow demo;
    weighCloves(demo, {"4.1", "5.0", "4.4", "4.6"});
    const QString before = demo.lineText(kGarlicLine, kWayAt);
    auto& offers = offersFor(demo, kGarlicLine);
    CHECK(offers.itemText(0) == QStringLiteral("series garlic, per clove, 4 readings"));
    take(demo, offers, QStringLiteral("series garlic"));
    CHECK(demo.lineText(kGarlicLine, kWayAt).startsWith(QStringLiteral("series, 4")));
    CHECK_FALSE(offers.isVisible());
    demo.draft().undoStack().undo();
    CHECK(demo.lineText(kGarlicLine, kWayAt) == before);
}

TEST_CASE("a line takes what its series is pooled with along", "[bind]") {
    DemoWindow demo;
    weighCloves(demo, {"4.1", "5.0"});
    const SeriesKey cloves{"garlic", SeriesKind::PerPiece, "clove"};
    demo.kitchen().pools().choose(cloves, {}, PoolChoice{true, {}});
    auto& offers = offersFor(demo, kGarlicLine);
    CHECK(offers.itemText(0) ==
          QStringLiteral("series garlic, per clove, 2 readings, pooled with the usual spread"));
    take(demo, offers, QStringLiteral("series garlic"));
    CHECK(followedSeries(demo.draft().document()).front().pooling->assumed);
    // The same with an earlier series, here that of the cloves themselves.
    demo.kitchen().pools().choose(cloves, {}, PoolChoice{false, EarlierSeries{cloves, {}, {}, {}}});
    take(demo, offersFor(demo, kGarlicLine), QStringLiteral("pooled with garlic"));
    const auto pooling = followedSeries(demo.draft().document()).front().pooling;
    REQUIRE(pooling->earlier);
    CHECK_FALSE(pooling->assumed);
    CHECK(pooling->earlier->name == "garlic");
    CHECK(pooling->earlier->freedom.value() == 1);
    CHECK(pooling->earlier->spread.value() == Approx(std::sqrt(0.405)).epsilon(1e-5));
    // Without a choice in this window the document's stays.
    demo.kitchen().pools() = {};
    take(demo, offersFor(demo, kGarlicLine), QStringLiteral("series garlic"));
    CHECK(followedSeries(demo.draft().document()).front().pooling->earlier == pooling->earlier);
}

TEST_CASE("a draft follows the series that its line is bound to", "[bind]") {
    DemoWindow demo;
    weighCloves(demo, {"4.1", "5.0", "4.4", "4.6"});
    take(demo, offersFor(demo, kGarlicLine), QStringLiteral("series garlic"));
    weighCloves(demo, {"4.9"});
    CHECK(waitUntil([&] {
        return demo.lineText(kGarlicLine, kWayAt).startsWith(QStringLiteral("series, 5"));
    }));
}

TEST_CASE("a line takes its weight from one reading", "[bind]") {
    DemoWindow demo;
    weighCloves(demo, {"4.1", "5.0"});
    const QString before = demo.lineText(kGarlicLine, kGramsAt);
    take(demo, offersFor(demo, kGarlicLine), QStringLiteral("reading 5.0 g of garlic"));
    CHECK(demo.lineText(kGarlicLine, kWayAt).startsWith(QStringLiteral("weighed")));
    CHECK(demo.lineText(kGarlicLine, kGramsAt) != before);
}

TEST_CASE("a line can be weighed now instead, and Esc leaves all as it was", "[bind]") {
    DemoWindow demo;
    const QString before = demo.lineText(kPrawnLine, kWayAt);
    auto& offers = offersFor(demo, kPrawnLine);
    pressKey(offers, Qt::Key_Escape);
    CHECK_FALSE(offers.isVisible());
    CHECK(demo.lineText(kPrawnLine, kWayAt) == before);
    offersFor(demo, kPrawnLine);
    click(child<QPushButton>(demo.window(), "bindWeigh"));
    settle();
    CHECK(child<QLineEdit>(demo.window(), "gross").hasFocus());
}

TEST_CASE("without a reading of the food the bar says so", "[bind]") {
    DemoWindow demo;
    auto& offers = offersFor(demo, kGarlicLine);
    CHECK_FALSE(offers.isVisible());
    CHECK(child<QPushButton>(demo.window(), "bindWeigh").isVisible());
    CHECK_FALSE(child<QPushButton>(demo.window(), "bindTake").isVisible());
}

}  // namespace nettare
