#include "app/work/task_runner.h"

#include "app/gui/support/gui.h"

#include <QSignalSpy>
#include <QThread>
#include <QTimer>

#include <atomic>
#include <memory>
#include <thread>

namespace nettare {

namespace {

/// Work that goes on until it is cancelled or let go.
struct Gate {
    std::atomic<bool> open = false, cancelSeen = false, entered = false;
};

auto workBehind(const std::shared_ptr<Gate>& gate, int result) {
    return [gate, result](const Progress& progress) {
        gate->entered = true;
        while (!gate->open && !progress.cancelled()) std::this_thread::yield();
        if (progress.cancelled()) gate->cancelSeen = true;
        return result;
    };
}

}  // namespace

TEST_CASE("the window goes on while long work runs, and gets the result in its own thread") {
    TaskRunner runner;
    QSignalSpy ended{&runner, &TaskRunner::ended};
    const auto gate = std::make_shared<Gate>();
    int turns = 0;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        if (++turns == 20) gate->open = true;
    });
    timer.start(0);
    int got = 0;
    QThread* where = nullptr;
    runner.run(QStringLiteral("count"), runner, workBehind(gate, 42), [&](int result) {
        got = result;
        where = QThread::currentThread();
    });
    CHECK(runner.busy());
    REQUIRE(waitUntil([&] { return ended.count() == 1; }));
    CHECK(turns >= 20);
    CHECK(got == 42);
    CHECK(where == QThread::currentThread());
    CHECK_FALSE(runner.busy());
}

TEST_CASE("work that is cancelled hears so, and its result never arrives") {
    TaskRunner runner;
    QSignalSpy ended{&runner, &TaskRunner::ended};
    const auto gate = std::make_shared<Gate>();
    bool arrived = false;
    const Progress progress = runner.run(QStringLiteral("count"), runner, workBehind(gate, 1),
                                         [&](int) { arrived = true; });
    REQUIRE(waitUntil([&] { return gate->entered.load(); }));
    progress.cancel();
    REQUIRE(waitUntil([&] { return ended.count() == 1; }));
    CHECK(gate->cancelSeen);
    CHECK_FALSE(arrived);
}

TEST_CASE("of one lane only the latest work answers") {
    TaskRunner runner;
    QSignalSpy ended{&runner, &TaskRunner::ended};
    const auto first = std::make_shared<Gate>();
    const auto second = std::make_shared<Gate>();
    const auto other = std::make_shared<Gate>();
    second->open = true;
    other->open = true;
    std::vector<int> answers;
    const auto note = [&](int answer) { answers.push_back(answer); };
    const QString lane = QStringLiteral("figures");
    runner.run(QStringLiteral("one"), runner, workBehind(first, 1), note, lane);
    runner.run(QStringLiteral("two"), runner, workBehind(second, 2), note, lane);
    REQUIRE(waitUntil([&] { return ended.count() == 2; }));
    CHECK(answers == std::vector<int>{2});

    runner.run(QStringLiteral("three"), runner, workBehind(second, 3), note, lane);
    runner.run(QStringLiteral("four"), runner, workBehind(other, 4), note,
               QStringLiteral("search"));
    REQUIRE(waitUntil([&] { return ended.count() == 4; }));
    CHECK(answers.size() == 3);
}

TEST_CASE("a finished answer is silenced too when newer work of its lane began") {
    TaskRunner runner;
    QSignalSpy ended{&runner, &TaskRunner::ended};
    std::atomic<bool> finished = false;
    std::vector<int> answers;
    const auto note = [&](int answer) { answers.push_back(answer); };
    const QString lane = QStringLiteral("figures");
    runner.run(
        QStringLiteral("one"), runner,
        [&finished](const Progress&) {
            finished = true;
            return 1;
        },
        note, lane);
    while (!finished) std::this_thread::yield();  // the result waits to be delivered
    runner.run(
        QStringLiteral("two"), runner, [](const Progress&) { return 2; }, note, lane);
    REQUIRE(waitUntil([&] { return ended.count() == 2; }));
    CHECK(answers == std::vector<int>{2});
}

TEST_CASE("a result is not delivered to a screen that was closed") {
    TaskRunner runner;
    QSignalSpy ended{&runner, &TaskRunner::ended};
    const auto gate = std::make_shared<Gate>();
    auto screen = std::make_unique<QObject>();
    bool arrived = false;
    runner.run(QStringLiteral("count"), *screen, workBehind(gate, 1), [&](int) { arrived = true; });
    REQUIRE(waitUntil([&] { return gate->entered.load(); }));
    screen.reset();
    gate->open = true;
    REQUIRE(waitUntil([&] { return ended.count() == 1; }));
    CHECK_FALSE(arrived);
}

TEST_CASE("work says its steps by name, and the last one always arrives") {
    TaskRunner runner;
    QSignalSpy steps{&runner, &TaskRunner::progressed};
    QSignalSpy ended{&runner, &TaskRunner::ended};
    runner.run(
        QStringLiteral("read a table"), runner,
        [](const Progress& progress) {
            constexpr int kFoods = 100'000;
            for (int i = 1; i <= kFoods; ++i)
                progress.step(QStringLiteral("foods"), static_cast<double>(i) / kFoods);
        },
        [] {});
    REQUIRE(waitUntil([&] { return ended.count() == 1; }));
    REQUIRE(!steps.isEmpty());
    CHECK(steps.count() < 100'000);
    CHECK(steps.last() ==
          QList<QVariant>{QStringLiteral("read a table"), QStringLiteral("foods"), 1.0});
}

TEST_CASE("a program that closes cancels its work and waits for its end") {
    const auto gate = std::make_shared<Gate>();
    bool arrived = false;
    {
        TaskRunner runner;
        runner.run(QStringLiteral("count"), runner, workBehind(gate, 1),
                   [&](int) { arrived = true; });
        while (!gate->entered) std::this_thread::yield();
    }
    CHECK(gate->cancelSeen);
    settle();
    CHECK_FALSE(arrived);
}

}  // namespace nettare
