#include <catch2/catch.hpp>
#include <random>
#include <thread>
#include <vector>

#include "app/command_line/in_order.h"

using nettare::InOrder;

TEST_CASE("results come in the order of their tasks, however late each is done", "[inorder]") {
    constexpr std::size_t kTasks = 5000;
    for (const std::size_t room : {1U, 3U, 64U}) {
        InOrder<std::size_t> tasks{kTasks, room};
        std::vector<std::jthread> threads;
        for (unsigned thread = 0; thread < 4; ++thread)
            threads.emplace_back([&tasks, thread] {
                std::mt19937 random{thread};
                while (const auto task = tasks.take()) {
                    for (auto idle = random() % 3; idle > 0; --idle) std::this_thread::yield();
                    tasks.put(*task, *task * 2);
                }
            });
        std::size_t wrong = 0;
        for (std::size_t task = 0; task < kTasks; ++task)
            if (tasks.next() != task * 2) ++wrong;
        CHECK(wrong == 0);
        CHECK_FALSE(tasks.next());
    }
}

TEST_CASE("no task is begun for which there is no room", "[inorder]") {
    InOrder<int> tasks{10, 2};
    CHECK(tasks.take() == 0U);
    CHECK(tasks.take() == 1U);
    std::jthread third{[&tasks] {
        const auto task = tasks.take();  // waits until the first result is handed on
        tasks.put(*task, 30);
    }};
    tasks.put(1, 20);
    tasks.put(0, 10);
    CHECK(tasks.next() == 10);
    CHECK(tasks.next() == 20);
    CHECK(tasks.next() == 30);
}

TEST_CASE("after a stop no further task is begun, and nobody waits for one", "[inorder]") {
    InOrder<int> tasks{10, 1};
    CHECK(tasks.take() == 0U);
    std::jthread waits{[&tasks] { static_cast<void>(tasks.take()); }};
    tasks.stop();
    waits.join();
    CHECK_FALSE(tasks.take());
}

TEST_CASE("of no tasks there is no result", "[inorder]") {
    InOrder<int> tasks{0, 4};
    CHECK_FALSE(tasks.take());
    CHECK_FALSE(tasks.next());
}
