#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string_view>

#include "app/bench/bench_screen.h"
#include "app/bench/ledger_output.h"
#include "app/files/share_folder.h"
#include "app/gui/bench/ledger_paths.h"
#include "app/gui/support/timer_watch.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/support/quiet_start.h"
#include "bench_work.h"

// window_waits [ENTRIES]: how long a 5 ms timer of the window waits while the bench opens a series
// of half of a ledger's entries and more, prints that ledger and saves it. The aim is at most 50
// ms.

namespace nettare {

namespace {

constexpr qint64 kMostWait_ms = 50;
constexpr int kPatience_ms = 600'000;

std::unique_ptr<KitchenSession> longKitchen(const QString& path, int entries) {
    auto kitchen = Kitchen::create(path.toStdString(), now());
    if (!kitchen) std::exit(1);
    BenchWork work{1};
    const auto filled = kitchen->together([&]() -> Result<void> {
        while (work.entries() < entries)
            if (const auto entry = kitchen->record(work.next()); !entry) return fail(entry.error());
        return {};
    });
    if (!filled) std::exit(1);
    return std::make_unique<KitchenSession>(std::move(*kitchen), shareFolder() + "/starter.table",
                                            false);
}

template <class Begin, class IsDone>
void watchWhile(const char* what, const Begin& begin, const IsDone& isDone) {
    QElapsedTimer taken;
    taken.start();
    const TimerWatch watch;
    begin();
    if (!QTest::qWaitFor(isDone, kPatience_ms)) std::exit(1);
    // What is shown then is painted as well.
    QTest::qWait(50);
    std::printf("  %-26s %7lld ms; a 5 ms timer waits %3lld ms at most, %3.0f of them worked: %s\n",
                what, static_cast<long long>(taken.elapsed()),
                static_cast<long long>(watch.worst_ms()), watch.mostWork_ms(),
                watch.worst_ms() <= kMostWait_ms ? "held" : "MISSED");
}

void watchAll(int entries) {
    const QTemporaryDir folder;
    const auto kitchen = longKitchen(folder.filePath(QStringLiteral("long.nettare")), entries);
    LedgerPaths paths{folder};
    BenchScreen screen{*kitchen, paths};
    screen.resize(1280, 800);
    screen.show();
    QTest::qWait(500);
    std::printf("%d entries of a ledger\n", entries);
    BenchDesk& desk = screen.desk();
    // The bench shows some series from the start.
    int shown = 0;
    QObject::connect(&desk, &BenchDesk::seriesChanged, &desk, [&shown] { ++shown; });
    desk.showSeries({"food 0", SeriesKind::Ratio, "edible / bought"});
    if (!QTest::qWaitFor([&shown] { return shown == 1; }, kPatience_ms)) std::exit(1);
    QTest::qWait(500);
    watchWhile(
        "series opens",
        [&desk] {
            desk.showSeries({"food 0", SeriesKind::PerPiece, "piece"});
        },
        [&shown] { return shown == 2; });
    auto& output = *screen.findChild<LedgerOutput*>();
    watchWhile(
        "ledger prints", [&output] { output.print(); }, [&output] { return !output.busy(); });
    watchWhile(
        "ledger becomes CSV", [&output] { output.saveCsv(); },
        [&output] { return !output.busy(); });
}

}  // namespace

}  // namespace nettare

int main(int argc, char** argv) {
    const std::string_view asked = argc > 1 ? argv[1] : "20000";
    int entries = 0;
    std::from_chars(asked.data(), asked.data() + asked.size(), entries);
    if (entries < 100) return 2;
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toLocal8Bit());
    auto quiet = std::make_unique<nettare::QuietStart>();
    const QApplication application{argc, argv};
    quiet.reset();
    nettare::watchAll(entries);
    return 0;
}
