#pragma once

#include <condition_variable>
#include <cstddef>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

namespace nettare {

/// Results of the tasks 0, 1, 2 ... `count` - 1, worked on by several threads and handed on by one
/// in the order of their numbers. Nobody begins a task that is `room` or more ahead of the one that
/// is handed on next, so that no more than `room` results are held.
template <class Value>
class InOrder {
public:
    /// `room` is at least 1.
    InOrder(std::size_t count, std::size_t room) : count_{count}, waiting_(room) {}

    /// The next task; waits for room. Nothing after the last one, or after stop().
    [[nodiscard]] std::optional<std::size_t> take() {
        std::unique_lock lock{mutex_};
        hasRoom_.wait(lock, [this] {
            return stopped_ || taken_ == count_ || taken_ < handedOn_ + waiting_.size();
        });
        if (stopped_ || taken_ == count_) return std::nullopt;
        if (taken_ + 1 == count_) hasRoom_.notify_all();  // who waits for another waits in vain
        return taken_++;
    }

    /// The result of a task that was taken.
    void put(std::size_t task, Value value) {
        const std::scoped_lock lock{mutex_};
        waiting_[task % waiting_.size()] = std::move(value);
        if (task == handedOn_) isThere_.notify_one();
    }

    /// The next result in order; waits for it. Nothing after the last one. For one thread alone.
    [[nodiscard]] std::optional<Value> next() {
        std::unique_lock lock{mutex_};
        if (handedOn_ == count_) return std::nullopt;
        std::optional<Value>& place = waiting_[handedOn_ % waiting_.size()];
        isThere_.wait(lock, [&place] { return place.has_value(); });
        std::optional<Value> value = std::exchange(place, std::nullopt);
        ++handedOn_;
        hasRoom_.notify_one();
        return value;
    }

    /// No further task is begun; next() is not called any more.
    void stop() {
        const std::scoped_lock lock{mutex_};
        stopped_ = true;
        hasRoom_.notify_all();
    }

private:
    std::mutex mutex_;
    std::condition_variable hasRoom_, isThere_;
    const std::size_t count_;
    std::vector<std::optional<Value>> waiting_;  ///< of task n at n modulo its size
    std::size_t taken_ = 0, handedOn_ = 0;
    bool stopped_ = false;
};

}  // namespace nettare
