#include "app/bench/bench_desk.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include <QElapsedTimer>
#include <QTimer>

#include <algorithm>
#include <cstdio>

#include "app/gui/bench/bench_kitchen.h"
#include "app/gui/support/gui.h"
#include "app/scale/weighing.h"

namespace nettare {

namespace {

const SeriesKey kPrawnMeat{"prawn meat", SeriesKind::PerPiece, "prawn"};

/// The longest that a 5 ms timer waited for its turn.
class TimerWatch {
public:
    TimerWatch() {
        timer_.setTimerType(Qt::PreciseTimer);
        QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] {
            worst_ms_ = std::max(worst_ms_, since_.restart());
            ++ticks_;
        });
        since_.start();
        timer_.start(5);
    }
    [[nodiscard]] qint64 worst_ms() const { return worst_ms_; }
    [[nodiscard]] int ticks() const { return ticks_; }

private:
    QTimer timer_;
    QElapsedTimer since_;
    qint64 worst_ms_ = 0;
    int ticks_ = 0;
};

}  // namespace

TEST_CASE("a series is judged from its readings, with those that were left out beside them") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6", "9.9", "10.1", "9.7", "9.8", "14.0"});
    bench.desk().showSeries(kPrawnMeat);
    bench.rest();
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->report->statistics.readings == 6);
    bench.desk().leaveOut(bench.desk().ledger().front().entry().id, QStringLiteral("with head"));
    bench.rest();
    const BenchSeries& series = *bench.desk().series();
    CHECK(series.report->statistics.readings == 5);
    CHECK(series.report->statistics.mean == Approx(9.82));
    CHECK(series.readings.size() == 6);
    CHECK(series.counted == std::vector<std::size_t>{0, 1, 2, 3, 4});
    CHECK(series.readings.back().reason == "with head");
}

TEST_CASE("tags split a series, and N others are asked of it until another one is looked at") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6", "9.9"}, {"size 16/20"});
    bench.weighPrawns({"14.0", "14.4", "14.2"}, {"size 8/12"});
    bench.desk().showSeries(kPrawnMeat, {"size 8/12"});
    bench.desk().setOthers(36);
    bench.rest();
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->readings.size() == 3);
    CHECK(bench.desk().series()->knownTags == std::vector<std::string>{"size 16/20", "size 8/12"});
    REQUIRE(bench.desk().series()->report->others);
    CHECK(bench.desk().series()->report->others->value == Approx(36 * 14.2));
    bench.desk().showSeries({"Prawn Meat", SeriesKind::PerPiece, "prawn"});
    bench.rest();
    CHECK(bench.desk().series()->readings.size() == 5);
    CHECK(bench.desk().series()->report->others);
}

TEST_CASE("a fault of the ledger is told and leaves all as it was") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6"});
    std::vector<ErrorCode> told;
    QObject::connect(&bench.desk(), &BenchDesk::failed, &bench.desk(),
                     [&told](const Error& error) { told.push_back(error.code); });
    const auto before = bench.desk().end().sequence;
    bench.desk().takeBack("00000000-0000-4000-8000-000000000000", QStringLiteral("slip"));
    bench.rest();
    REQUIRE(told.size() == 1);
    CHECK(bench.desk().end().sequence == before);
}

TEST_CASE("ten thousand readings of a series open beside the window") {
    BenchKitchen bench;
    std::vector<LedgerEntry> entries;
    for (int i = 0; i < 10'000; ++i) {
        LedgerEntry entry;
        entry.id = freshUuid();
        entry.indication = entry.id;
        entry.at = fmt::format("2026-05-{:02}T{:02}:{:02}:00+02:00", 1 + i / 1440 % 28, i / 60 % 24,
                               i % 60);
        entry.shown = Decimal{95 + i % 11, -1};
        entry.unit = "g";
        entry.readability = Decimal{1, -1};
        entry.scale = "counter";
        entry.what = "prawn meat";
        entry.vesselTare = Decimal{0, -1};
        entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, {}};
        entries.push_back(std::move(entry));
    }
    bench.desk().record(entries);
    bench.rest();
    settle();
    const TimerWatch watch;
    QElapsedTimer opening;
    opening.start();
    bench.desk().showSeries(kPrawnMeat);
    REQUIRE(waitUntil([&] { return bench.desk().series() != nullptr; }));
    std::fprintf(stdout, "10,000 readings open in %lld ms; a 5 ms timer waits %lld ms at most\n",
                 static_cast<long long>(opening.elapsed()),
                 static_cast<long long>(watch.worst_ms()));
    CHECK(bench.desk().series()->readings.size() == 10'000);
    CHECK(bench.desk().series()->report->statistics.readings == 10'000);
    CHECK(watch.ticks() > 0);
}

}  // namespace nettare
