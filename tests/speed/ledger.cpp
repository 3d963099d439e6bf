#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fcntl.h>
#include <fmt/core.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <limits>
#include <string>
#include <vector>

#include "bench_work.h"
#include "core/ledger/counted_series.h"
#include "core/support/sha256.h"
#include "db/kitchen/kitchen.h"

// ledger FOLDER ENTRIES [READINGS]: a kitchen of so many entries on the disk of that folder, with
// series of so many readings (10,000). Times recording, a page, a series and the check, each beside
// what the machine needs for the bare work.

namespace nettare {

namespace {

using Times = std::vector<double>;

constexpr int kRecordings = 2000;
constexpr int kOfSeries = 10'000;
constexpr auto kAt = "2026-05-16T08:00:00Z";

template <class T>
T must(Result<T> answer) {
    if (!answer) {
        fmt::print("refused: error {}\n", static_cast<int>(answer.error().code));
        std::exit(1);
    }
    if constexpr (!std::is_void_v<T>) return std::move(*answer);
}

/// Milliseconds of one call.
template <class Work>
double timed(const Work& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> taken =
        std::chrono::steady_clock::now() - begin;
    return taken.count();
}

/// The least of a few calls, so that what else the machine does does not count.
template <class Work>
double leastOf(int calls, const Work& work) {
    double least = std::numeric_limits<double>::max();
    for (int i = 0; i < calls; ++i) least = std::min(least, timed(work));
    return least;
}

double quantile(Times times, double share) {
    std::ranges::sort(times);
    return times.at(static_cast<std::size_t>(share * static_cast<double>(times.size() - 1)));
}

void printTimes(const char* what, const Times& times) {
    fmt::print("  {:<40} median {:>7.3f} ms, p99 {:>7.3f} ms, most {:>7.3f} ms\n", what,
               quantile(times, 0.5), quantile(times, 0.99), quantile(times, 1));
}

const char* held(bool isHeld) {
    return isHeld ? "held" : "MISSED";
}

void fill(Kitchen& kitchen, BenchWork& work, int entries) {
    constexpr int kTogether = 20'000;
    while (work.entries() < entries)
        must(kitchen.together([&]() -> Result<void> {
            for (int i = 0; i < kTogether && work.entries() < entries; ++i)
                must(kitchen.record(work.next()));
            return {};
        }));
}

/// A small file that is written on and synced, as durable recording does at the least.
class BareSync {
public:
    explicit BareSync(const std::string& path)
        : file_{::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644)} {}
    ~BareSync() { ::close(file_); }
    BareSync(const BareSync&) = delete;
    BareSync& operator=(const BareSync&) = delete;

    void once() const {
        static const std::array<char, 4096> kPage{};
        if (::write(file_, kPage.data(), kPage.size()) < 0 || ::fsync(file_) != 0) std::exit(1);
    }

private:
    int file_;
};

void printRecording(Kitchen& kitchen, BenchWork& work, const std::string& folder) {
    constexpr double kMostMs = 20;
    const BareSync bare{folder + "/bare"};
    Times records, syncs;
    for (int i = 0; i < kRecordings; ++i) {
        syncs.push_back(timed([&] { bare.once(); }));
        const LedgerEntry entry = work.next();
        records.push_back(timed([&] { must(kitchen.record(entry)); }));
    }
    printTimes("4 KiB written and synced", syncs);
    printTimes("one entry recorded", records);
    const double p99 = quantile(records, 0.99);
    fmt::print("  p99 {:.2f}x; under {} ms: {}\n", p99 / quantile(syncs, 0.99), kMostMs,
               held(p99 < kMostMs));
}

/// The bare query of the same entries, as text.
std::size_t bareSeries(SQLite::Database& database, const SeriesKey& key) {
    SQLite::Statement row{database,
                          "SELECT entry, hash FROM ledger WHERE sequence IN (SELECT sequence FROM "
                          "series_entry WHERE series = (SELECT id FROM series WHERE folded = ? AND "
                          "kind = 'per piece')) ORDER BY sequence"};
    row.bind(1, key.what);
    std::size_t bytes = 0;
    while (row.executeStep()) bytes += row.getColumn(0).getString().size();
    return bytes;
}

void printSeries(const Kitchen& kitchen, const std::string& path) {
    constexpr double kMostMs = 50;
    constexpr int kCalls = 5;
    const SeriesKey key{"food 0", SeriesKind::PerPiece, "piece"};
    SQLite::Database bare{path};
    const double query = leastOf(kCalls, [&] { bareSeries(bare, key); });
    std::size_t entries = 0;
    std::size_t counted = 0;
    const auto open = [&entries, &counted, &key](const Kitchen& from) {
        auto read = must(from.seriesEntries(key));
        entries = read.size();
        counted = countedSeries(readingsOf(std::move(read), must(from.scaleChecks())), key, {})
                      .pieces.size();
    };
    const Kitchen justOpened = must(Kitchen::open(path, KitchenAccess::Read));
    const double first = timed([&] { open(justOpened); });
    const double series = leastOf(kCalls, [&] { open(justOpened); });
    const double kept = leastOf(kCalls, [&] { must(kitchen.seriesKept()); });
    const double page = leastOf(kCalls, [&] { must(kitchen.ledgerPage(0, 200)); });
    fmt::print("  {:<40} {:>7.2f} ms\n", "the bare query of a series", query);
    fmt::print("  {:<40} {:>7.2f} ms\n", "a series opened by a kitchen just opened", first);
    fmt::print("  the same again: {} count of {} entries {:>9.2f} ms, {:.2f}x; under {} ms: {}\n",
               counted, entries, series, series / query, kMostMs, held(series < kMostMs));
    fmt::print("  {:<40} {:>7.2f} ms\n", "all series listed", kept);
    fmt::print("  {:<40} {:>7.2f} ms\n", "a page of 200", page);
}

double processor_s() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void printCheck(const Kitchen& kitchen, const std::string& path) {
    constexpr double kLeastPerSecond = 200'000;
    std::size_t bytes = 0;
    const double sums = leastOf(2, [&] {
        SQLite::Database bare{path};
        SQLite::Statement row{bare, "SELECT entry FROM ledger ORDER BY sequence"};
        while (row.executeStep()) bytes += sha256(row.getColumn(0).getString()).size();
    });
    KitchenCheck check;
    const double before_s = processor_s();
    constexpr int kCalls = 2;
    const double whole = leastOf(kCalls, [&] { check = must(kitchen.verify()); });
    const double taken_s = (processor_s() - before_s) / kCalls;
    const auto entries = static_cast<double>(check.ledgerEntries);
    fmt::print("  {:<40} {:>9.0f} entries a second\n", "read and SHA-256 alone, one thread",
               1000 * entries / sums);
    fmt::print(
        "  {:<40} {:>9.0f} entries a second, {:.2f}x the time; {:.1f} us of processors "
        "each\n",
        "verify", 1000 * entries / whole, whole / sums, 1e6 * taken_s / entries);
    fmt::print("  faults {}; over {} a second: {}\n", check.faults.size(), kLeastPerSecond,
               held(1000 * entries / whole > kLeastPerSecond));
}

void run(const std::string& folder, int entries, int ofSeries) {
    const std::string path = folder + "/ledger_speed.nettare";
    for (const char* ending : {"", "-wal", "-shm"}) std::filesystem::remove(path + ending);
    // Of ten entries about seven are of a series of pieces.
    BenchWork work{std::max(1, entries * 7 / 10 / ofSeries)};
    Kitchen kitchen = must(Kitchen::create(path, kAt));
    const double filled = timed([&] { fill(kitchen, work, entries); });
    fmt::print("{} entries, filled in {:.1f} s, {} MB\n", entries, filled / 1000,
               std::filesystem::file_size(path) / 1'000'000);
    printRecording(kitchen, work, folder);
    printSeries(kitchen, path);
    printCheck(kitchen, path);
}

}  // namespace

}  // namespace nettare

int main(int count, char** arguments) {
    if (count < 3 || count > 4) return 2;
    const auto number = [arguments](int place) {
        const std::string_view asked = arguments[place];
        int found = 0;
        std::from_chars(asked.data(), asked.data() + asked.size(), found);
        return found;
    };
    const int entries = number(2);
    const int ofSeries = count == 4 ? number(3) : nettare::kOfSeries;
    if (entries < 1 || ofSeries < 1) return 2;
    nettare::run(arguments[1], entries, ofSeries);
}
