#include "app/bench/ledger_list.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>

#include "app/bench/ledger_row.h"
#include "app/gui/bench/bench_window.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/scale/weighing.h"

namespace nettare {

namespace {

std::string rowText(BenchWindow& bench, int row) {
    const auto& view = child<QListView>(bench.screen(), "ledgerView");
    return view.model()->index(row, 0).data().toString().toStdString();
}

void choose(BenchWindow& bench, int row) {
    auto& view = child<QListView>(bench.screen(), "ledgerView");
    view.setCurrentIndex(view.model()->index(row, 0));
}

void press(BenchWindow& bench, const char* button) {
    click(child<QPushButton>(bench.screen(), button));
    bench.rest();
}

void give(BenchWindow& bench, const char* reason) {
    auto& own = child<QLineEdit>(bench.screen(), "ownReason");
    typeText(own, QLatin1String{reason});
    pressKey(own, Qt::Key_Return);
    bench.rest();
}

}  // namespace

TEST_CASE(
    "the ledger tells of each row what was shown, what is left of it, and what became of it") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.screen().weighing().chooseTare(1);
    bench.screen().weighing().setPieces(6);
    bench.record(QStringLiteral("271.1"));
    CHECK_THAT(rowText(bench, 0),
               Catch::EndsWith(
                   ", prawn meat, 6 pieces, gross 271.1 g, tare 212.2 g, net 58.9 g, weighed"));
    CHECK_THAT(rowText(bench, 1), Catch::EndsWith(", steel bowl, empty, gross 212.2 g, vessel"));
}

TEST_CASE("the ledger's head says where the chain ends, and what a check of it found") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    const auto head = [&bench] {
        return child<QLabel>(bench.screen(), "ledgerHead").text().toStdString();
    };
    const LedgerEnd end = bench.desk().end();
    const std::string hash = end.hash.substr(0, 8);
    CHECK_THAT(head(), Catch::EndsWith(", chain ends in " + hash));
    bench.desk().setChain({end.sequence, 0, end.hash});
    CHECK_THAT(head(), Catch::EndsWith(", chain intact, ends in " + hash));
    bench.record(QStringLiteral("58.9"));
    CHECK_THAT(head(),
               Catch::EndsWith(", chain intact up to entry " + std::to_string(end.sequence) +
                               ", ends in " + bench.desk().end().hash.substr(0, 8)));
    keepScreenPictures(bench.screen(), QStringLiteral("bench-chain"));
    bench.desk().setChain({end.sequence, 2, end.hash});
    CHECK_THAT(head(), Catch::Contains(", chain BROKEN at entry 2, ends in "));
}

TEST_CASE("a zero that was only taken as tare has no row of its own") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("58.9"));
    CHECK_THAT(rowText(bench, 0), Catch::EndsWith("gross 58.9 g, tare 0.0 g, net 58.9 g, weighed"));
    CHECK_THAT(rowText(bench, 1), Catch::Contains("steel bowl"));
}

TEST_CASE("a reading is taken back with a reason, which can be changed, and stays readable") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("58.9"));
    choose(bench, 0);
    press(bench, "takeBackRow");
    give(bench, "bowl not empty");
    CHECK_THAT(rowText(bench, 0), Catch::EndsWith("net 58.9 g, taken back: bowl not empty"));
    choose(bench, 0);
    press(bench, "changeReason");
    press(bench, "usualReason");
    CHECK_THAT(rowText(bench, 0), Catch::EndsWith("taken back: slip of the hand"));
    CHECK_FALSE(child<QPushButton>(bench.screen(), "takeBackRow").isVisible());
    const auto ledger = bench.ledger();
    CHECK(ledger.back().entry.kind == EntryKind::Reasoned);
}

TEST_CASE("a reading is left out of its series and taken in again") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    for (const char* shown : {"9.8", "9.9", "15.0"}) bench.record(QLatin1String{shown});
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->report->statistics.readings == 3);
    choose(bench, 0);
    press(bench, "leaveOutRow");
    give(bench, "with its head");
    CHECK_THAT(rowText(bench, 0), Catch::EndsWith("left out: with its head"));
    CHECK(bench.desk().series()->report->statistics.readings == 2);
    choose(bench, 0);
    press(bench, "takeInRow");
    CHECK_THAT(rowText(bench, 0), Catch::EndsWith("weighed"));
    CHECK(bench.desk().series()->report->statistics.readings == 3);
}

TEST_CASE("a row says that its tare, or what went in, was taken back") {
    LedgerReading reading;
    reading.net = Decimal{2500, -1};
    CHECK(ledgerRowOf(reading).became == QStringLiteral("weighed"));
    reading.tareOverruled = true;
    reading.tareReason = "lid on";
    CHECK(ledgerRowOf(reading).became == QStringLiteral("its tare was taken back: lid on"));
    CHECK(ledgerRowOf(reading).counts);
    reading.beforeOverruled = true;
    reading.beforeReason = "two bulbs more";
    CHECK(
        ledgerRowOf(reading).became ==
        QStringLiteral("what went in was taken back: two bulbs more; its tare was taken back: lid "
                       "on"));
    reading.leftOut = true;
    reading.reason = "peel among it";
    CHECK(ledgerRowOf(reading).became == QStringLiteral("left out: peel among it"));
}

TEST_CASE("older readings come as the ledger is scrolled") {
    BenchWindow bench;
    std::vector<LedgerEntry> entries;
    for (int i = 0; i < 250; ++i) {
        LedgerEntry entry;
        entry.id = freshUuid();
        entry.indication = entry.id;
        entry.at = "2026-05-23T12:00:00+02:00";
        entry.shown = Decimal{1000 + i, -1};
        entry.unit = "g";
        entry.readability = Decimal{1, -1};
        entry.scale = "counter";
        entry.what = "carrot";
        entry.vesselTare = Decimal{0, -1};
        entries.push_back(entry);
    }
    bench.desk().record(entries);
    bench.rest();
    auto& view = child<QListView>(bench.screen(), "ledgerView");
    CHECK(view.model()->rowCount() == 100);
    CHECK_THAT(rowText(bench, 0), Catch::Contains("gross 124.9 g"));
    for (int i = 0; i < 4; ++i) {
        view.scrollToBottom();
        settle();
        bench.rest();
    }
    CHECK(view.model()->rowCount() == 251);
    CHECK_THAT(rowText(bench, 249), Catch::Contains("gross 100.0 g"));
}

}  // namespace nettare
