#pragma once

#include <QElapsedTimer>
#include <QTimer>

#include <algorithm>
#include <ctime>

namespace nettare {

/// The longest that a 5 ms timer of this thread waited for its turn, and the most that this thread
/// worked between two turns: on a loaded machine it waits long and works little.
class TimerWatch {
public:
    TimerWatch() {
        timer_.setTimerType(Qt::PreciseTimer);
        QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] { tick(); });
        since_.start();
        worked_ms_ = processor_ms();
        timer_.start(5);
    }

    [[nodiscard]] qint64 worst_ms() const { return worst_ms_; }
    [[nodiscard]] double mostWork_ms() const { return mostWork_ms_; }
    [[nodiscard]] int ticks() const { return ticks_; }

private:
    static double processor_ms() {
        timespec used{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &used);
        return static_cast<double>(used.tv_sec) * 1e3 + static_cast<double>(used.tv_nsec) / 1e6;
    }
    void tick() {
        worst_ms_ = std::max(worst_ms_, since_.restart());
        const double worked_ms = processor_ms();
        mostWork_ms_ = std::max(mostWork_ms_, worked_ms - worked_ms_);
        worked_ms_ = worked_ms;
        ++ticks_;
    }

    QTimer timer_;
    QElapsedTimer since_;
    qint64 worst_ms_ = 0;
    double worked_ms_ = 0, mostWork_ms_ = 0;
    int ticks_ = 0;
};

}  // namespace nettare
