#include <SQLiteCpp/Database.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <thread>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// "anna on counter-pc, process 1234" of this very process.
bool namesThisProcess(const std::string& holder) {
    const std::string process = ", process " + std::to_string(getpid());
    return holder.find(" on ") != std::string::npos && holder.ends_with(process);
}

}  // namespace

TEST_CASE("the second window reads, and says who writes", "[kitchen][windows]") {
    const OneKitchen one;
    Kitchen first = one.open();
    Kitchen second = one.open();
    CHECK(first.writable());
    CHECK_FALSE(second.writable());
    CHECK(namesThisProcess(second.heldBy()));
    CHECK(
        namesThisProcess(one.folder().read("home.nettare.held").substr(0, second.heldBy().size())));
    const std::string id = *first.addRecipe(dish("soup"), kNoon);
    CHECK(second.recipes()->size() == 1);
    CHECK(second.find("soup")->size() == 1);
    for (const Error& error :
         {second.addRecipe(dish("cake"), kNoon).error(), second.record(shown(1, "1")).error(),
          second.journal(id, cursorAt(0, 0)).error(),
          second.keep(id, toKeep(dish("a"), "")).error(), second.copyIn({rowOf("1", 1)}).error()}) {
        CHECK(error.code == ErrorCode::KitchenHeld);
        CHECK(error.value("holder") == second.heldBy());
        CHECK(error.file == one.path());
    }
    CHECK(second.verify()->faults.empty());
}

TEST_CASE("a window that closes leaves the kitchen to the next", "[kitchen][windows]") {
    const OneKitchen one;
    {
        const Kitchen first = one.open();
        CHECK_FALSE(one.open().writable());
        CHECK(one.folder().has("home.nettare.held"));
    }
    CHECK_FALSE(one.folder().has("home.nettare.held"));
    CHECK(one.open().writable());
}

TEST_CASE("a kitchen is held under all its names", "[kitchen][windows]") {
    const OneKitchen one;
    const std::string other = one.folder().path("other.nettare");
    REQUIRE(::symlink(one.path().c_str(), other.c_str()) == 0);
    const Kitchen first = one.open();
    const auto second = Kitchen::open(other, KitchenAccess::Write);
    REQUIRE(second);
    CHECK_FALSE(second->writable());
    CHECK(second->path() == other);
}

TEST_CASE("a kitchen opened to read is held by nobody and refuses changes", "[kitchen][windows]") {
    const OneKitchen one;
    Kitchen reader = one.open(KitchenAccess::Read);
    CHECK_FALSE(reader.writable());
    CHECK(reader.heldBy().empty());
    CHECK(reader.addRecipe(dish("a"), kNoon).error().code == ErrorCode::KitchenOpenToRead);
    Kitchen writer = one.open();
    CHECK(writer.writable());
    REQUIRE(writer.addRecipe(dish("a"), kNoon));
    CHECK(reader.recipes()->size() == 1);
}

TEST_CASE("a holder that was killed holds nothing", "[kitchen][windows]") {
    const OneKitchen one;
    const pid_t child = fork();
    if (child == 0) {
        const auto kitchen = Kitchen::open(one.path(), KitchenAccess::Write);
        // Says that it holds the kitchen by a file, and waits to be killed.
        if (kitchen && kitchen->writable()) one.folder().write("ready", "x");
        for (;;) pause();
    }
    REQUIRE(child > 0);
    for (int i = 0; i < 500 && !one.folder().has("ready"); ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds{10});
    const Kitchen second = one.open();
    CHECK_FALSE(second.writable());
    CHECK(second.heldBy().ends_with(", process " + std::to_string(child)));
    kill(child, SIGKILL);
    REQUIRE(waitpid(child, nullptr, 0) == child);
    CHECK(one.folder().has("home.nettare.held"));
    CHECK(one.open().writable());
}

TEST_CASE("a kitchen that another program keeps busy refuses the change, and takes it afterwards",
          "[kitchen][windows]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    {
        SQLite::Database other{one.path(), SQLite::OPEN_READWRITE};
        other.exec("BEGIN IMMEDIATE");
        const auto refused = kitchen.record(shown(1, "340"));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == ErrorCode::KitchenBusy);
    }
    CHECK(kitchen.record(shown(1, "340")));
}

TEST_CASE("a name that is not whole yet is another window", "[kitchen][windows]") {
    const OneKitchen one;
    const Kitchen first = one.open();
    one.folder().write("home.nettare.held", "half a na");
    CHECK(one.open().heldBy() == "another window");
}
