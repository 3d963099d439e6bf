#include <QElapsedTimer>

#include <cstdio>

#include "app/bench/bench_screen.h"
#include "app/bench/ledger_output.h"
#include "app/gui/bench/ledger_paths.h"
#include "app/gui/session/demo_kitchen.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/timer_watch.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "support/bench_work.h"

namespace nettare {

namespace {

constexpr int kEntries = 20'000;
const SeriesKey kManyPieces{"food 0", SeriesKind::PerPiece, "piece"};

/// The window may keep a 5 ms timer waiting so long.
constexpr qint64 kMostWait_ms = 50;
/// A loaded machine works so many times as long, and gives the processor to others for longer.
constexpr double kLoadAtWork = 2;
constexpr double kLoad = 10;
#if defined(__SANITIZE_ADDRESS__)
constexpr double kSlower = 5;
constexpr int kPrinted = 2'000;
#else
constexpr double kSlower = 1;
constexpr int kPrinted = kEntries;
#endif

/// The bench, shown, on a kitchen of so many entries, most of them of one series; in a file or in
/// memory.
class LongBench {
public:
    explicit LongBench(bool inFile, int entries = kEntries) {
        auto kitchen = inFile ? Kitchen::create(path(), now()) : Kitchen::inMemory(now());
        REQUIRE(kitchen);
        BenchWork work{1};
        REQUIRE(kitchen->together([&]() -> Result<void> {
            while (work.entries() < entries)
                if (const auto entry = kitchen->record(work.next()); !entry)
                    return fail(entry.error());
            return {};
        }));
        kitchen_ = std::make_unique<KitchenSession>(std::move(*kitchen), starterTable(), !inFile);
        screen_ = std::make_unique<BenchScreen>(*kitchen_, paths_);
        showReady(*screen_, {1280, 800});
        rest();
    }

    [[nodiscard]] BenchDesk& desk() { return screen_->desk(); }
    [[nodiscard]] LedgerOutput& output() { return *screen_->findChild<LedgerOutput*>(); }
    [[nodiscard]] QString file(const char* name) const {
        return folder_.filePath(QLatin1String{name});
    }
    void rest() {
        nettare::rest(*kitchen_);
        settle();
    }

private:
    [[nodiscard]] std::string path() const { return file("long.nettare").toStdString(); }

    QTemporaryDir folder_;
    LedgerPaths paths_{folder_};
    std::unique_ptr<KitchenSession> kitchen_;
    std::unique_ptr<BenchScreen> screen_;
};

/// Watches a timer from `begin()` until `isDone()`, prints what it found and holds it to the bar.
template <class Begin, class IsDone>
void watchWhile(const char* what, const Begin& begin, const IsDone& isDone) {
    QElapsedTimer taken;
    taken.start();
    const TimerWatch watch;
    begin();
    CHECK(waitUntil(isDone, 60'000));
    // What is shown then is painted as well.
    CHECK(waitUntil([&, after = watch.ticks()] { return watch.ticks() > after + 2; }));
    std::fprintf(stdout, "%s: %lld ms; a 5 ms timer waits %lld ms at most, %.0f of them worked\n",
                 what, static_cast<long long>(taken.elapsed()),
                 static_cast<long long>(watch.worst_ms()), watch.mostWork_ms());
    CHECK(watch.mostWork_ms() < kSlower * kLoadAtWork * kMostWait_ms);
    CHECK(static_cast<double>(watch.worst_ms()) < kSlower * kLoad * kMostWait_ms);
}

}  // namespace

TEST_CASE("the bench stays awake while a series of more than ten thousand readings opens") {
    LongBench bench{true};
    // The bench shows some series from the start.
    bench.desk().showSeries({"food 0", SeriesKind::Ratio, "edible / bought"});
    bench.rest();
    REQUIRE(bench.desk().series() != nullptr);
    REQUIRE(bench.desk().series()->readings.size() < 5'000);
    int shown = 0;
    QObject::connect(&bench.desk(), &BenchDesk::seriesChanged, &bench.desk(),
                     [&shown] { ++shown; });
    watchWhile(
        "a long series opens", [&] { bench.desk().showSeries(kManyPieces); },
        [&] { return shown == 1; });
    CHECK(bench.desk().series()->readings.size() > 10'000);
    // And again, when what was shown goes.
    watchWhile(
        "the same for 36 others", [&] { bench.desk().setOthers(36); }, [&] { return shown == 2; });
}

TEST_CASE("the bench stays awake while a long ledger is printed or saved") {
    const bool inFile = GENERATE(true, false);
    LongBench bench{inFile, kPrinted};
    watchWhile(
        inFile ? "a long ledger prints" : "one in memory prints", [&] { bench.output().print(); },
        [&] { return !bench.output().busy(); });
    CHECK(QFile::exists(bench.file("ledger.pdf")));
    watchWhile(
        inFile ? "a long ledger becomes CSV" : "one in memory becomes CSV",
        [&] { bench.output().saveCsv(); }, [&] { return !bench.output().busy(); });
    CHECK(QFile::exists(bench.file(inFile ? "long ledger.csv" : "the sample ledger.csv")));
}

}  // namespace nettare
