#pragma once

#include <QDateTime>
#include <QTemporaryDir>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/bench/bench_screen.h"
#include "app/bench/weigh_pane.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/theme/theme.h"
#include "app/window/main_window.h"

namespace nettare {

/// What a cook weighed, as the ledger has to say at the end.
struct DayReading {
    int net_dg = 0;  ///< tenths of a gram
    bool takenBack = false, leftOut = false;

    friend bool operator==(const DayReading&, const DayReading&) = default;
};

/// A cook's day at the bench of the real window, on a kitchen of two recipes in a folder. The clock
/// is turned by hand: every weighing takes 17 seconds of the day and none of the machine's. Keys
/// and clicks do the work where there are any.
class BenchDay {
public:
    BenchDay();
    ~BenchDay();
    BenchDay(const BenchDay&) = delete;
    BenchDay& operator=(const BenchDay&) = delete;

    /// Some two dozen weighings: a bowl that is filled, prawns one by one, a jar, a trim, lines of
    /// the recipe; with what is taken back, left out, undone and done again.
    void doRound();
    /// The scale is checked, the bowl weighed anew, a revision kept, the other recipe opened.
    void beginHour();
    /// Backspace is held on an empty number until the last reading is taken back.
    void holdBackspace();
    /// What the top bar says once the clock has gone on by so much at the sheet.
    [[nodiscard]] QString stateAfter(int seconds);
    /// Closes window and kitchen; the file stays.
    void close();

    [[nodiscard]] QDateTime moment() const { return moment_; }
    [[nodiscard]] std::string path() const;
    /// Indications, and what else was written to the ledger.
    [[nodiscard]] int weighings() const { return weighings_; }
    [[nodiscard]] int entries() const { return entries_; }
    [[nodiscard]] int revisions() const { return revisions_; }
    [[nodiscard]] const std::vector<DayReading>& readings() const { return readings_; }
    /// Errors that the window was told.
    [[nodiscard]] int failures() const { return failures_; }
    [[nodiscard]] KitchenSession& kitchen() { return *kitchen_; }

private:
    [[nodiscard]] WeighPane& pane() { return bench_->weighing(); }
    void rest();
    void turnClock(int seconds) { moment_ = moment_.addSecs(seconds); }
    void open(int recipe);
    void food(const std::string& what, const std::optional<SeriesMark>& series = {});
    void line(const std::string& id);
    void take(TareKind kind);
    void type(int shown_dg);
    /// Types and presses Enter; so many entries are to follow.
    void record(int shown_dg, int entries, std::optional<int> net_dg);
    void takeLastBack();
    void fillBowl();
    void weighPrawns();
    void takeFromJar();
    void trimFennel();
    void weighLines();
    void weighOut();
    void clickRow(const char* button, bool reason);

    QTemporaryDir folder_;
    std::vector<std::string> recipes_;
    QDateTime moment_;
    ClockInstead clock_;
    Theme theme_;
    std::unique_ptr<KitchenSession> kitchen_;
    std::unique_ptr<MainWindow> window_;
    BenchScreen* bench_ = nullptr;
    int round_ = 0, hour_ = 0;
    int weighings_ = 0, entries_ = 0, revisions_ = 0, failures_ = 0;
    std::vector<DayReading> readings_;
};

}  // namespace nettare
