#include "app/work/task_runner.h"

#include <QMetaObject>

#include <algorithm>

namespace nettare {

TaskRunner::TaskRunner(QObject* parent) : QObject{parent} {}

TaskRunner::~TaskRunner() {
    cancelAll();
    pool_.waitForDone();
}

Progress TaskRunner::begin(const QString& name, QObject& receiver, const QString& lane,
                           std::function<Delivery(const Progress&)> work) {
    if (!lane.isEmpty()) cancel(lane);
    const quint64 number = ++lastNumber_;
    Progress progress{[this, number] {
        QMetaObject::invokeMethod(
            this, [this, number] { take(number); }, Qt::QueuedConnection);
    }};
    tasks_.push_back({number, name, lane, &receiver, progress});
    emit started(name);
    pool_.start([this, number, progress, work = std::move(work)] {
        const Delivery delivery = progress.cancelled() ? Delivery{} : work(progress);
        QMetaObject::invokeMethod(
            this, [this, number, delivery] { finish(number, delivery); }, Qt::QueuedConnection);
    });
    return progress;
}

void TaskRunner::take(quint64 number) {
    const auto task = find(number);
    if (task == tasks_.end() || task->progress.cancelled()) return;
    const Step step = task->progress.takenStep();
    emit progressed(task->name, step.name, step.share);
}

void TaskRunner::finish(quint64 number, const Delivery& delivery) {
    const auto found = find(number);
    if (found == tasks_.end()) return;
    const Task task = std::move(*found);
    tasks_.erase(found);
    if (!task.progress.cancelled() && !task.receiver.isNull() && delivery) delivery();
    emit ended(task.name);
}

void TaskRunner::cancel(const QString& lane) {
    for (const Task& task : tasks_)
        if (task.lane == lane) task.progress.cancel();
}

void TaskRunner::cancelAll() {
    for (const Task& task : tasks_) task.progress.cancel();
}

std::vector<TaskRunner::Task>::iterator TaskRunner::find(quint64 number) {
    return std::ranges::find(tasks_, number, &Task::number);
}

}  // namespace nettare
