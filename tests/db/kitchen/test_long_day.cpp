#include <sqlite3.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fstream>

#include "bench_work.h"
#include "one_kitchen.h"

using namespace nettare;

namespace {

constexpr int kSecondsApart = 20;
constexpr int kEntriesOfDay = 8 * 3600 / kSecondsApart;

struct MemoryUsed {
    sqlite3_int64 ofSqlite = 0;
    long resident = 0;  ///< bytes; 0 where freed memory is kept on purpose
};

MemoryUsed memoryUsed() {
    MemoryUsed used{sqlite3_memory_used()};
#ifndef __SANITIZE_ADDRESS__
    std::ifstream pages{"/proc/self/statm"};
    long all = 0, resident = 0;
    if (pages >> all >> resident) used.resident = resident * ::sysconf(_SC_PAGESIZE);
#endif
    return used;
}

/// What a bench asks for.
void lookAtBench(const Kitchen& kitchen, const LedgerEntry& entry) {
    REQUIRE(kitchen.ledgerPage(0, 50));
    REQUIRE(kitchen.seriesKept());
    REQUIRE(kitchen.ledgerEnd());
    if (const auto key = seriesKeyOf(entry)) REQUIRE(kitchen.seriesEntries(*key));
}

}  // namespace

TEST_CASE("eight hours at the bench leave a whole ledger and no more memory in use",
          "[kitchen][bench]") {
    constexpr long kTolerance = 8L << 20U;
    const OneKitchen one;
    Kitchen kitchen = one.open();
    // As a cook weighs: a food for a while, then the next, so that no series grows all day.
    BenchWork work{200, kSecondsApart};
    MemoryUsed halfway;
    std::string first, last;
    for (int i = 1; i <= kEntriesOfDay; ++i) {
        const auto entry = kitchen.record(work.next());
        if (!entry) FAIL(said(entry.error()));
        if (i % 10 == 0) lookAtBench(kitchen, entry->entry);
        if (i == kEntriesOfDay / 2) halfway = memoryUsed();
        if (first.empty()) first = entry->entry.at;
        last = entry->entry.at;
    }
    CHECK(first == "2026-05-16T08:00:20Z");
    CHECK(last == "2026-05-16T16:00:00Z");
    const MemoryUsed end = memoryUsed();
    CHECK(end.ofSqlite - halfway.ofSqlite < kTolerance / 4);
    CHECK(end.resident - halfway.resident < kTolerance);
    const auto check = kitchen.verify();
    for (const Error& fault : check->faults) FAIL(said(fault));
    CHECK(check->ledgerEntries == kEntriesOfDay);
}
