#include "app/bench/bench_keys.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include "app/gui/bench/bench_window.h"
#include "app/gui/support/gui.h"

namespace nettare {

namespace {

long readingsIn(BenchWindow& bench) {
    const auto ledger = bench.ledger();
    return std::count_if(ledger.begin(), ledger.end(), [](const ChainedEntry& each) {
        return each.entry.kind == EntryKind::Shown && each.entry.state != WeighedState::Empty;
    });
}

}  // namespace

TEST_CASE("at the bench Enter and the space bar record what is typed") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    auto& number = child<QLineEdit>(bench.screen(), "benchNumber");
    typeText(number, QStringLiteral("58.9"));
    CHECK(bench.shown() == "58.9 g ± 0.1");
    pressKey(number, Qt::Key_Return);
    bench.rest();
    CHECK(readingsIn(bench) == 1);
    CHECK(number.text().isEmpty());
    typeText(number, QStringLiteral("60.1"));
    pressKey(number, Qt::Key_Space);
    bench.rest();
    CHECK(readingsIn(bench) == 2);
    CHECK_THAT(bench.said(), Catch::StartsWith("Recorded 60.1 g, prawn meat, "));
}

TEST_CASE("a key held down or bouncing records once") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    auto& number = child<QLineEdit>(bench.screen(), "benchNumber");
    typeText(number, QStringLiteral("58.9"));
    pressKey(number, Qt::Key_Return);
    pressKey(number, Qt::Key_Return);
    for (int i = 0; i < 5; ++i) {
        QKeyEvent again{QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"),
                        true};
        QCoreApplication::sendEvent(&number, &again);
    }
    bench.rest();
    CHECK(readingsIn(bench) == 1);
    CHECK_THAT(bench.said(), Catch::StartsWith("Recorded 58.9 g"));
    CHECK(bench.tones() == 1);
}

TEST_CASE("digits typed anywhere on the bench go to the number") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("58.9"));
    auto& number = child<QLineEdit>(bench.screen(), "benchNumber");
    auto& list = child<QListView>(bench.screen(), "ledgerView");
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_7, Qt::NoModifier);
    CHECK(number.text() == QStringLiteral("7"));
    CHECK(number.hasFocus());
    auto& next = child<QPushButton>(bench.screen(), "recordReading");
    next.setFocus();
    QTest::keyClick(&next, Qt::Key_Comma);
    QTest::keyClick(&number, Qt::Key_5);
    CHECK(number.text() == QStringLiteral("7,5"));
    CHECK(bench.shown() == "7.5 g ± 0.1");
}

TEST_CASE("Backspace edits the number, and held on an empty one takes the last reading back") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("58.9"));
    auto& number = child<QLineEdit>(bench.screen(), "benchNumber");
    typeText(number, QStringLiteral("12"));
    QTest::keyPress(&number, Qt::Key_Backspace);
    QTest::qWait(1000);
    QTest::keyRelease(&number, Qt::Key_Backspace);
    CHECK(number.text() == QStringLiteral("1"));
    pressKey(number, Qt::Key_Backspace);
    CHECK(readingsIn(bench) == 1);
    QTest::keyPress(&number, Qt::Key_Backspace);
    QTest::qWait(300);
    QTest::keyRelease(&number, Qt::Key_Backspace);
    bench.rest();
    CHECK(bench.ledger().back().entry.kind == EntryKind::Shown);
    QTest::keyPress(&number, Qt::Key_Backspace);
    REQUIRE(waitUntil([&] { return bench.said().starts_with("Taken back"); }));
    QTest::keyRelease(&number, Qt::Key_Backspace);
    CHECK(bench.said() == "Taken back: 58.9 g, prawn meat; slip of the hand");
    const auto ledger = bench.ledger();
    CHECK(ledger.back().entry.kind == EntryKind::Superseded);
    CHECK(ledger.back().entry.reason == "slip of the hand");
}

TEST_CASE("while the bench asks something, Enter answers and records nothing") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    typeText(child<QLineEdit>(bench.screen(), "benchNumber"), QStringLiteral("58.9"));
    emit bench.screen().weighing().taresAsked();
    auto& choice = child<QPushButton>(*bench.screen().panes()[6], "choice0");
    choice.setFocus();
    pressKey(choice, Qt::Key_Return);
    CHECK(
        waitUntil([&] { return bench.screen().weighing().state().tare.kind == TareKind::Shown; }));
    bench.rest();
    CHECK(readingsIn(bench) == 0);
}

TEST_CASE("without a reading of this sitting nothing is taken back") {
    BenchWindow bench;
    const auto before = bench.ledger().size();
    bench.screen().weighing().takeBackLast();
    bench.rest();
    CHECK(bench.said() == "Nothing was recorded here yet.");
    CHECK(bench.ledger().size() == before);
}

}  // namespace nettare
