#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <chrono>
#include <filesystem>
#include <random>
#include <thread>

#include "db/food_table.h"
#include "small_sr28.h"

using namespace nettare;

namespace {

/// Foods beside the six of the small release, so that an import lasts some time.
constexpr int kFoods = 4000;

void addFoods(SmallSr28& small, std::string_view word) {
    std::string foods = bytesOf(small.folder() + "/FOOD_DES.txt");
    std::string values = bytesOf(small.folder() + "/NUT_DATA.txt");
    for (int i = 0; i < kFoods; ++i) {
        const std::string number = "~" + std::to_string(10000 + i) + "~";
        foods += number + "^~1100~^~" + std::string{word} + " kale " + std::to_string(i) +
                 "~^~~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57\r\n";
        for (const char* nutrient : {"203", "208", "209"})
            values += number + "^~" + nutrient + "~^1.5^3^0.1^~1~^~A~^~~^~~^^^^^^^~~^05/2016^\r\n";
    }
    small.file("FOOD_DES.txt", foods);
    small.file("NUT_DATA.txt", values);
}

/// An import in a process of its own.
class ImportProcess {
public:
    explicit ImportProcess(const SmallSr28& small) {
        std::array<int, 2> ends{};
        REQUIRE(::pipe(ends.data()) == 0);
        process_ = ::fork();
        if (process_ == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::execl(NETTARE_IMPORT_ONCE, NETTARE_IMPORT_ONCE, small.folder().c_str(),
                    small.tables().c_str(), nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
        pipe_ = ends[0];
        REQUIRE(process_ > 0);
    }
    ImportProcess(const ImportProcess&) = delete;
    ImportProcess& operator=(const ImportProcess&) = delete;
    ~ImportProcess() { ::close(pipe_); }

    /// Waits until it reads.
    void awaitBegin() {
        char first = 0;
        REQUIRE(::read(pipe_, &first, 1) == 1);
    }
    /// Kills it; true where it was still at work.
    bool kill() {
        ::kill(process_, SIGKILL);
        int state = 0;
        ::waitpid(process_, &state, 0);
        return WIFSIGNALED(state);
    }
    /// Lets it end; its exit code.
    int await() {
        int state = 0;
        ::waitpid(process_, &state, 0);
        return WIFEXITED(state) ? WEXITSTATUS(state) : -1;
    }

private:
    pid_t process_ = -1;
    int pipe_ = -1;
};

using Clock = std::chrono::steady_clock;

std::chrono::microseconds timeOfImport(const SmallSr28& small) {
    const auto start = Clock::now();
    ImportProcess whole{small};
    REQUIRE(whole.await() == 0);
    return std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - start);
}

}  // namespace

TEST_CASE("however an import is killed, the old table or the new one is there, whole", "[kills]") {
    SmallSr28 older;
    addFoods(older, "Old");
    SmallSr28 newer;
    addFoods(newer, "New");
    REQUIRE(importTable(older.request()));
    const std::string oldTable = bytesOf(older.table());
    const auto time = timeOfImport(newer);
    const std::string newTable = bytesOf(newer.table());
    REQUIRE(oldTable != newTable);
    std::mt19937 random{20261126};
    int atWork = 0;
    for (int i = 0; i < 25; ++i) {
        INFO("kill " << i);
        std::filesystem::copy_file(older.table(), newer.table(),
                                   std::filesystem::copy_options::overwrite_existing);
        ImportProcess import{newer};
        import.awaitBegin();
        // One in five comes late enough to see the file put in its place.
        const auto most = static_cast<unsigned>(time.count()) * (i % 5 == 4 ? 12 : 9) / 10 + 1;
        std::this_thread::sleep_for(std::chrono::microseconds{random() % most});
        if (import.kill()) ++atWork;
        const std::string left = bytesOf(newer.table());
        CHECK((left == oldTable || left == newTable));
        const auto table = FoodTable::open(newer.table());
        REQUIRE(table);
        CHECK(table->size() == kFoods + 6);
        // The next import clears what the killed one left, and works.
        if (i % 5 == 0) {
            const auto again = importTable(newer.request());
            REQUIRE(again);
            CHECK(bytesOf(newer.table()) == newTable);
            CHECK(newer.listed() == "usda-sr_28.table\n");
        }
    }
    CHECK(atWork >= 10);
}
