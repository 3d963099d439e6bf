#include "app/work/store_thread.h"

#include <QCoreApplication>

namespace nettare {

StoreThread::StoreThread(QObject* parent) : QObject{parent} {
    worker_.moveToThread(&thread_);
    thread_.setObjectName(QStringLiteral("store"));
    thread_.start();
}

StoreThread::~StoreThread() {
    // An empty job behind all others: quit() alone would overtake them.
    QMetaObject::invokeMethod(
        &worker_, [] {}, Qt::BlockingQueuedConnection);
    thread_.quit();
    thread_.wait();
}

void StoreThread::run(std::function<void()> job) {
    ++open_;
    QMetaObject::invokeMethod(&worker_, std::move(job), Qt::QueuedConnection);
}

void StoreThread::answerHere(std::function<void()> answer) {
    QMetaObject::invokeMethod(
        this,
        [this, answer = std::move(answer)] {
            --open_;
            answer();
        },
        Qt::QueuedConnection);
}

void StoreThread::drain() {
    while (open_ > 0) {
        QMetaObject::invokeMethod(
            &worker_, [] {}, Qt::BlockingQueuedConnection);
        QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
    }
}

}  // namespace nettare
