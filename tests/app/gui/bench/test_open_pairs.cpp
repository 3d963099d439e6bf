#include "app/bench/open_pairs.h"

#include "app/bench/bench_desk.h"
#include "app/bench/two_line_button.h"
#include "app/gui/bench/bench_window.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/scale/weighing.h"
#include "app/session/now.h"

namespace nettare {

namespace {

FreeSubject ratioOf(const char* what, const char* ratio) {
    FreeSubject subject;
    subject.what = what;
    subject.series = SeriesMark{SeriesKind::Ratio, ratio, {}, {}};
    return subject;
}

const FreeSubject& fennel() {
    static const FreeSubject subject = ratioOf("fennel", kRatios[0]);
    return subject;
}

std::string recordedAs(BenchWindow& bench, const char* shown) {
    bench.record(QString::fromLatin1(shown));
    return bench.desk().ledger().front().entry().id;
}

TwoLineButton& pairWith(BenchWindow& bench) {
    return child<TwoLineButton>(bench.screen(), "pairWith");
}

const WeighState& stateOf(BenchWindow& bench) {
    return bench.screen().weighing().state();
}

}  // namespace

TEST_CASE("what was weighed raw waits while other things are weighed") {
    BenchWindow bench;
    WeighPane& pane = bench.screen().weighing();
    pane.weigh(ratioOf("pork shoulder", kRatios[1]));
    CHECK_FALSE(pairWith(bench).isVisible());
    const std::string raw = recordedAs(bench, "1480.5");
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("10.4"));
    CHECK_FALSE(pairWith(bench).isVisible());
    pane.weigh(ratioOf("Pork shoulder", kRatios[1]));
    CHECK(stateOf(bench).before == raw);
    CHECK(pairWith(bench).isVisible());
    CHECK(pairWith(bench).mainText() == QStringLiteral("with 1480.5 g"));
    CHECK(pairWith(bench).detail().startsWith(QStringLiteral("raw, ")));
    CHECK(pairWith(bench).width() >= pairWith(bench).sizeHint().width());
    keepScreenPictures(bench.screen(), QStringLiteral("bench-pair"));
    bench.record(QStringLiteral("1036.4"));
    CHECK(bench.desk().ledger().front().before == Decimal(14805, -1));
    CHECK(stateOf(bench).before.empty());
    CHECK_FALSE(pairWith(bench).isVisible());
}

TEST_CASE("several are weighed as bought first, then each of them trimmed") {
    BenchWindow bench;
    bench.screen().weighing().weigh(fennel());
    const std::string one = recordedAs(bench, "486.0");
    CHECK(stateOf(bench).before == one);
    click(pairWith(bench));
    CHECK(stateOf(bench).before.empty());
    CHECK(pairWith(bench).mainText() == QStringLiteral("a new pair"));
    CHECK(pairWith(bench).detail() == QStringLiteral("as bought"));
    const std::string two = recordedAs(bench, "501.2");
    CHECK(stateOf(bench).before.empty());
    const std::string three = recordedAs(bench, "455.0");
    click(pairWith(bench));
    CHECK(stateOf(bench).before == one);
    bench.record(QStringLiteral("382.0"));
    CHECK(stateOf(bench).before == two);
    click(pairWith(bench));
    CHECK(stateOf(bench).before == three);
    bench.record(QStringLiteral("350.0"));
    CHECK(stateOf(bench).before == two);
    bench.record(QStringLiteral("390.0"));
    CHECK(stateOf(bench).before.empty());
    REQUIRE(bench.desk().series()->ratio);
    CHECK(bench.desk().series()->ratio->statistics.readings == 3);
}

TEST_CASE("a pair that was begun is gone on with after the window was closed") {
    BenchWindow bench;
    bench.screen().weighing().weigh(fennel());
    const std::string first = recordedAs(bench, "486.0");
    WeighPane fresh{bench.desk(), bench.kitchen()};
    fresh.weigh(fennel());
    CHECK(fresh.state().before == first);
    // Another food, or another ratio of the same, has none.
    fresh.weigh(ratioOf("leek", kRatios[0]));
    CHECK(fresh.state().before.empty());
    fresh.weigh(ratioOf("fennel", kRatios[1]));
    CHECK(fresh.state().before.empty());
}

TEST_CASE("what waits since another day is offered, not taken") {
    QDateTime clock{{2026, 5, 23}, {21, 30}, Qt::OffsetFromUTC, 7200};
    const ClockInstead instead{[&clock] { return clock; }};
    BenchWindow bench;
    bench.screen().weighing().weigh(fennel());
    const std::string first = recordedAs(bench, "486.0");
    clock = clock.addSecs(43'200);
    bench.weighPrawnMeat();
    bench.screen().weighing().weigh(fennel());
    CHECK(stateOf(bench).before.empty());
    click(pairWith(bench));
    CHECK(stateOf(bench).before == first);
    CHECK(pairWith(bench).detail() == QStringLiteral("as bought, 23 May 21:30"));
}

TEST_CASE("a first that was taken back waits for nothing") {
    BenchWindow bench;
    bench.screen().weighing().weigh(fennel());
    bench.record(QStringLiteral("486.0"));
    bench.screen().weighing().takeBackLast();
    bench.rest();
    CHECK(stateOf(bench).before.empty());
    CHECK_FALSE(pairWith(bench).isVisible());
}

TEST_CASE("a first that was corrected after its pair was whole waits for nothing") {
    BenchWindow bench;
    bench.screen().weighing().weigh(fennel());
    const std::string first = recordedAs(bench, "486.0");
    bench.record(QStringLiteral("382.0"));
    LedgerEntry correction;
    for (const ChainedEntry& each : bench.ledger())
        if (each.entry.id == first) correction = each.entry;
    correction.id = correction.indication = freshUuid();
    correction.shown = Decimal{4680, -1};
    correction.refersTo = first;
    correction.reason = "misread";
    bench.desk().record({correction});
    bench.rest();
    CHECK(bench.desk().ledger().front().entry().id == correction.id);
    CHECK_FALSE(pairWith(bench).isVisible());
    bench.weighPrawnMeat();
    bench.screen().weighing().weigh(fennel());
    CHECK(stateOf(bench).before.empty());
}

TEST_CASE("the second of a pair may be taken from a jar") {
    BenchWindow bench;
    WeighPane& pane = bench.screen().weighing();
    pane.weigh(ratioOf("chickpeas", kRatios[2]));
    const std::string whole = recordedAs(bench, "400.0");
    for (std::size_t i = 0; i < pane.tares().size(); ++i)
        if (pane.tares()[i].kind == TareKind::Jar) pane.chooseTare(static_cast<int>(i));
    bench.record(QStringLiteral("900.0"));
    CHECK(stateOf(bench).before == whole);
    bench.record(QStringLiteral("660.0"));
    CHECK(bench.desk().ledger().front().before == Decimal(4000, -1));
    CHECK(bench.desk().ledger().front().net == Decimal(2400, -1));
}

}  // namespace nettare
