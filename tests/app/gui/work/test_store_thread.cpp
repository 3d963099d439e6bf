#include "app/work/store_thread.h"

#include "app/gui/support/gui.h"

#include <QThread>

#include <algorithm>
#include <atomic>
#include <memory>
#include <thread>
#include <vector>

namespace nettare {

TEST_CASE("jobs of the store run one by one in the order posted, in one other thread") {
    StoreThread store;
    std::vector<int> ran, delivered;
    std::atomic<int> inside = 0;
    bool alone = true;
    std::vector<std::thread::id> threads;
    for (int i = 0; i < 200; ++i)
        store.post(
            &store,
            [&, i] {
                alone = alone && ++inside == 1;
                ran.push_back(i);
                threads.push_back(std::this_thread::get_id());
                --inside;
                return i;
            },
            [&](int job) { delivered.push_back(job); });
    REQUIRE(waitUntil([&] { return delivered.size() == 200; }));
    CHECK(alone);
    CHECK(ran == delivered);
    CHECK(std::ranges::is_sorted(ran));
    CHECK(threads.front() != std::this_thread::get_id());
    CHECK(threads.front() == threads.back());
}

TEST_CASE("draining the store runs what its answers posted, too") {
    StoreThread store;
    std::vector<int> said;
    store.post(
        &store, [] { return 1; },
        [&](int first) {
            said.push_back(first);
            store.post(
                &store, [] { return 2; }, [&](int second) { said.push_back(second); });
        });
    store.drain();
    CHECK(said == std::vector<int>{1, 2});
    store.drain();
    CHECK(said.size() == 2);
}

TEST_CASE("an answer of the store that can only be moved arrives whole") {
    StoreThread store;
    int got = 0;
    store.post(
        &store, [] { return std::make_unique<int>(7); },
        [&](const std::unique_ptr<int>& number) { got = *number; });
    store.drain();
    CHECK(got == 7);
}

TEST_CASE("the store answers no screen that was closed, but the job is done") {
    StoreThread store;
    auto screen = std::make_unique<QObject>();
    std::atomic<bool> done = false;
    bool answered = false;
    store.post(
        screen.get(), [&] { return done.exchange(true); }, [&](bool) { answered = true; });
    screen.reset();
    store.drain();
    CHECK(done);
    CHECK_FALSE(answered);
}

TEST_CASE("closing the store does every job that was posted") {
    std::atomic<int> done = 0;
    {
        StoreThread store;
        for (int i = 0; i < 50; ++i)
            store.post(
                &store, [&] { return ++done; }, [](int) {});
    }
    CHECK(done == 50);
}

}  // namespace nettare
