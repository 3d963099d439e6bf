#include <malloc.h>

#include <QElapsedTimer>

#include <cmath>
#include <cstdio>

#include "app/gui/bench/bench_day.h"
#include "app/gui/support/gui.h"
#include "app/words/error_sentence.h"
#include "core/ledger/ledger_reading.h"

namespace nettare {

namespace {

constexpr int kHour_s = 3600;
constexpr int kRound_s = 500;
constexpr std::size_t kAllowedAnHour = 1'500'000;

/// Two, or what the slow stage asks for.
int hoursAsked() {
    return qEnvironmentVariableIsSet("NETTARE_BENCH_HOURS")
               ? qEnvironmentVariableIntValue("NETTARE_BENCH_HOURS")
               : 2;
}

/// Bytes that the program holds; 0 where a sanitizer keeps what was freed.
std::size_t bytesHeld() {
#if defined(__SANITIZE_ADDRESS__)
    return 0;
#else
    const auto used = mallinfo2();
    return used.uordblks + used.hblkhd;
#endif
}

/// All but tares and empty vessels, oldest first.
std::vector<DayReading> readingsIn(const Kitchen& kitchen) {
    const auto entries = kitchen.ledger();
    REQUIRE(entries);
    std::vector<DayReading> readings;
    for (const LedgerReading& each : readingsOf(*entries, {})) {
        if (!each.net || each.entry().what.empty()) continue;
        readings.push_back({static_cast<int>(std::lround(each.net->value() * 10)),
                            !each.supersededBy.empty(), each.leftOut});
    }
    return readings;
}

/// A recipe's draft as the file has it.
Json draftIn(const Kitchen& kitchen, const std::string& recipe) {
    const auto draft = kitchen.draft(recipe);
    REQUIRE(draft);
    Json document = draft->base;
    for (std::size_t i = 0; i < draft->cursor; ++i) {
        auto after = applied(document, draft->edits[i]);
        REQUIRE(after);
        document = std::move(*after);
    }
    return document;
}

}  // namespace

TEST_CASE(
    "hours at the bench by a clock turned by hand leave a whole ledger, and no more memory used",
    "[day]") {
    const int hours = hoursAsked();
    REQUIRE(hours >= 2);
    QElapsedTimer taken;
    taken.start();
    BenchDay day;
    const QDateTime begin = day.moment();
    std::vector<std::size_t> held;
    for (int hour = 1; hour <= hours; ++hour) {
        day.beginHour();
        while (begin.secsTo(day.moment()) < hour * kHour_s - kRound_s / 2) day.doRound();
        if (hour % 4 == 2) day.holdBackspace();
        if (hour % 4 == 2)
            CHECK_THAT(day.stateAfter(300).toStdString(), Catch::EndsWith("saved 5 min ago"));
        held.push_back(bytesHeld());
    }
    std::fprintf(stdout,
                 "%d hours at the bench: %d weighings, %d entries in %lld ms; kB by hour:", hours,
                 day.weighings(), day.entries(), static_cast<long long>(taken.elapsed()));
    for (const std::size_t bytes : held) std::fprintf(stdout, " %zu", bytes / 1000);
    std::fprintf(stdout, "\n");
    CHECK(day.weighings() >= 180 * hours);
    CHECK(day.failures() == 0);
    // From the second hour on, or the first; what stays is the undo of that hour's edits.
    const auto warm = static_cast<std::size_t>(hours > 2 ? 1 : 0);
    const std::size_t hoursSince = held.size() - 1 - warm;
    CHECK(held.back() < held[warm] + hoursSince * kAllowedAnHour);
    const std::string document = writeJson(day.kitchen().draft()->document());
    const std::string recipe = day.kitchen().draft()->recipe().toStdString();
    day.close();

    const auto kitchen = Kitchen::open(day.path(), KitchenAccess::Write);
    REQUIRE(kitchen);
    const auto check = kitchen->verify();
    REQUIRE(check);
    for (const Error& fault : check->faults) FAIL(errorSentence(fault));
    CHECK(check->ledgerEntries == static_cast<std::size_t>(day.entries()));
    CHECK(check->revisions == static_cast<std::size_t>(day.revisions()));
    CHECK(writeJson(draftIn(*kitchen, recipe)) == document);
    CHECK(readingsIn(*kitchen) == day.readings());
}

}  // namespace nettare
