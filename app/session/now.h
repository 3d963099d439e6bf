#pragma once

#include <QDateTime>
#include <QElapsedTimer>

#include <functional>
#include <optional>
#include <string>

namespace nettare {

/// The time of this moment as ISO 8601 with seconds and the offset of the place. In the thread of
/// the window.
[[nodiscard]] std::string now();

/// The day of this moment at the place. In the thread of the window.
[[nodiscard]] QDate today();

/// How long ago something was. In the thread of the window.
class SinceThen {
public:
    /// It is now.
    void start();
    /// Whole seconds since start(), by a clock that nobody sets; nothing before it.
    [[nodiscard]] std::optional<int> seconds() const;

private:
    QElapsedTimer timer_;
    QDateTime then_;  ///< by the clock in place of the computer's
};

/// While it lives, that clock tells the time in place of the computer's, so that hours pass at
/// once. One at a time.
class ClockInstead {
public:
    /// `clock` answers with the offset of the place.
    explicit ClockInstead(std::function<QDateTime()> clock);
    ~ClockInstead();
    ClockInstead(const ClockInstead&) = delete;
    ClockInstead& operator=(const ClockInstead&) = delete;
};

}  // namespace nettare
