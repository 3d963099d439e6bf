#pragma once

#include <QObject>
#include <QPointer>
#include <QThread>

#include <atomic>
#include <functional>
#include <memory>
#include <type_traits>
#include <utility>

namespace nettare {

/// One thread that does jobs in the order they were posted; answers come in the thread that owns
/// this object. For a file that only one thread may use at a time.
class StoreThread : public QObject {
    Q_OBJECT

public:
    explicit StoreThread(QObject* parent = nullptr);
    /// Does what was posted, then ends; answers that did not come yet never come.
    ~StoreThread() override;

    /// Runs work() in the thread, then done(its answer) here, unless `receiver` is gone by then.
    template <class Work, class Done>
    void post(QObject* receiver, Work work, Done done) {
        QPointer<QObject> guard{receiver};
        run([this, guard, work = std::move(work), done = std::move(done)]() mutable {
            using Answer = std::invoke_result_t<Work&>;
            auto answer = std::make_shared<Answer>(work());
            answerHere([guard, answer, done = std::move(done)]() mutable {
                if (guard) done(std::move(*answer));
            });
        });
    }

    /// Waits until all that was posted is done and answered, also what the answers posted.
    void drain();

private:
    void run(std::function<void()> job);
    void answerHere(std::function<void()> answer);

    QThread thread_;
    QObject worker_;  ///< lives in thread_
    std::atomic<int> open_ = 0;
};

}  // namespace nettare
