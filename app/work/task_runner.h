#pragma once

#include "app/work/progress.h"

#include <QObject>
#include <QPointer>
#include <QString>
#include <QThreadPool>

#include <functional>
#include <memory>
#include <type_traits>
#include <utility>
#include <vector>

namespace nettare {

/// Runs long work beside the window, which never waits. Lives in the thread of the window; results
/// arrive there. Dies only after its work has ended: it cancels all and waits.
class TaskRunner : public QObject {
    Q_OBJECT

public:
    explicit TaskRunner(QObject* parent = nullptr);
    ~TaskRunner() override;

    /// Runs `work(const Progress&) -> T` elsewhere, then `done(T)` here; or `done()` where T is
    /// void. Where the work was cancelled or `receiver` died, `done` is not called. `name` is what
    /// the window calls the work. With a `lane`, a newer task of that lane cancels and silences
    /// those before it. The work must own or share what it uses.
    template <class Work, class Done>
    Progress run(const QString& name, QObject& receiver, Work work, Done done,
                 const QString& lane = {});

    void cancel(const QString& lane);
    void cancelAll();

    [[nodiscard]] bool busy() const { return !tasks_.empty(); }

signals:
    void started(const QString& name);
    /// `share` of the whole work, 0 to 1.
    void progressed(const QString& name, const QString& step, double share);
    void ended(const QString& name);

private:
    struct Task {
        quint64 number;
        QString name, lane;
        QPointer<QObject> receiver;
        Progress progress;
    };
    using Delivery = std::function<void()>;

    Progress begin(const QString& name, QObject& receiver, const QString& lane,
                   std::function<Delivery(const Progress&)> work);
    void take(quint64 number);
    void finish(quint64 number, const Delivery& delivery);
    [[nodiscard]] std::vector<Task>::iterator find(quint64 number);

    QThreadPool pool_;
    std::vector<Task> tasks_;
    quint64 lastNumber_ = 0;
};

template <class Work, class Done>
Progress TaskRunner::run(const QString& name, QObject& receiver, Work work, Done done,
                         const QString& lane) {
    using T = std::invoke_result_t<Work&, const Progress&>;
    // Shared, so that results and callables that can only be moved fit a std::function.
    auto task = std::make_shared<Work>(std::move(work));
    auto after = std::make_shared<Done>(std::move(done));
    return begin(name, receiver, lane, [task, after](const Progress& progress) -> Delivery {
        if constexpr (std::is_void_v<T>) {
            (*task)(progress);
            return [after] { (*after)(); };
        } else {
            auto result = std::make_shared<T>((*task)(progress));
            return [after, result] { (*after)(std::move(*result)); };
        }
    });
}

}  // namespace nettare
