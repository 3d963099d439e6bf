#include <catch2/catch.hpp>
#include <charconv>
#include <chrono>
#include <cstdlib>
#include <map>
#include <random>
#include <string_view>
#include <thread>

#include "kitchen/one_kitchen.h"
#include "kitchen/sample_dishes.h"
#include "worker.h"

using namespace nettare;

namespace {

/// What was acknowledged of one kind of work, and what was begun after that.
struct Count {
    std::string acknowledged, begun;
};
using Counts = std::map<std::string, Count>;

/// Lines come in pairs: "ledger 7", "ok".
void follow(Counts& counts, const std::vector<std::string>& lines) {
    std::string kind;
    for (const std::string& line : lines) {
        if (line.starts_with("refused")) FAIL(line);
        if (line == "ready") continue;
        if (line == "ok") {
            counts[kind].acknowledged = counts[kind].begun;
            continue;
        }
        kind = line.substr(0, line.find(' '));
        counts[kind].begun = line.substr(line.find(' ') + 1);
    }
}

/// The kitchen stands where it was acknowledged, or one step on, which was begun.
void checkOne(const Count& count, const std::string& found) {
    CAPTURE(count.acknowledged, count.begun, found);
    const bool nothingYet = count.acknowledged.empty() && (found == "0" || found == "0 0");
    CHECK((found == count.acknowledged || found == count.begun || nothingYet));
}

/// A kill leaves one thing begun at most: what is found now counts from here on.
void checkKitchen(const OneKitchen& one, Counts& counts) {
    const Kitchen kitchen = one.open();
    CHECK(kitchen.writable());
    const auto check = kitchen.verify();
    REQUIRE(check);
    for (const Error& fault : check->faults) FAIL(said(fault));
    const auto draft = kitchen.draft("t0");
    const std::map<std::string, std::string> found{
        {"ledger", std::to_string(check->ledgerEntries)},
        {"revision", std::to_string(check->revisions)},
        {"draft", std::to_string(draft->edits.size()) + " " + std::to_string(draft->cursor)},
    };
    for (const auto& [kind, value] : found) {
        INFO(kind);
        checkOne(counts[kind], value);
        counts[kind] = {value, value};
    }
}

void killOnce(const OneKitchen& one, unsigned seed, Counts& counts) {
    std::mt19937 random{seed};
    Worker worker{one.path(), seed};
    REQUIRE(worker.isReady());
    std::this_thread::sleep_for(std::chrono::microseconds{random() % 120'000});
    follow(counts, worker.killed());
}

/// 25, or what the slow stage asks for.
unsigned killsAsked() {
    const char* asked = std::getenv("NETTARE_KILLS");
    const std::string_view text = asked != nullptr ? asked : "25";
    unsigned kills = 0;
    std::from_chars(text.data(), text.data() + text.size(), kills);
    return kills;
}

}  // namespace

TEST_CASE("however often the program is killed, nothing acknowledged is gone", "[kills]") {
    constexpr unsigned kKillsEach = 25;
    const unsigned kills = killsAsked();
    REQUIRE(kills >= 1);
    unsigned seed = 20260516;
    for (unsigned done = 0; done < kills; done += kKillsEach) {
        const OneKitchen one;
        REQUIRE(one.open().addRecipe(dish("t0"), kNoon));
        Counts counts;
        for (unsigned i = 0; i < kKillsEach && done + i < kills; ++i) {
            INFO("kill " << done + i);
            killOnce(one, ++seed, counts);
            checkKitchen(one, counts);
        }
        // The worker really worked.
        CHECK(counts["ledger"].acknowledged != "0");
        CHECK(counts["revision"].acknowledged != "0");
    }
}
