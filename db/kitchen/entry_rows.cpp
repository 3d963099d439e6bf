#include "db/kitchen/entry_rows.h"

#include <deque>
#include <future>
#include <iterator>

#include "db/kitchen/stored_entry.h"

namespace nettare {

namespace {

constexpr std::size_t kReadTogether = 1000;
constexpr std::size_t kReadAtOnce = 3;

struct RawEntry {
    std::int64_t sequence = 0;
    std::string text, hash;
};

struct ReadEntries {
    std::vector<ChainedEntry> entries;
    std::int64_t unreadable = 0;  ///< the first that is none; 0 where all are
};

ReadEntries readAll(const std::vector<RawEntry>& rows) {
    ReadEntries read;
    read.entries.reserve(rows.size());
    for (const RawEntry& row : rows) {
        auto entry = entryFrom(row.text, row.hash);
        if (!entry) return {{}, row.sequence};
        read.entries.push_back(std::move(*entry));
    }
    return read;
}

/// Takes rows and gives entries, in the same order.
class EntryQueue {
public:
    void add(Query& row) {
        rows_.push_back({row.number(0), row.text(1), row.text(2)});
        if (rows_.size() == kReadTogether) readBeside();
    }
    /// The rest is read here: most often it is all there is.
    ReadEntries finish() {
        while (!beside_.empty()) takeFirst();
        append(readAll(rows_));
        return std::move(read_);
    }

private:
    void readBeside() {
        beside_.push_back(std::async(std::launch::async,
                                     [rows = std::exchange(rows_, {})] { return readAll(rows); }));
        rows_.reserve(kReadTogether);
        if (beside_.size() > kReadAtOnce) takeFirst();
    }
    void takeFirst() {
        append(beside_.front().get());
        beside_.pop_front();
    }
    void append(ReadEntries next) {
        if (read_.unreadable != 0) return;
        read_.unreadable = next.unreadable;
        read_.entries.insert(read_.entries.end(), std::make_move_iterator(next.entries.begin()),
                             std::make_move_iterator(next.entries.end()));
    }

    std::vector<RawEntry> rows_;
    std::deque<std::future<ReadEntries>> beside_;
    ReadEntries read_;
};

Error unreadable(const KitchenStore& store, std::int64_t sequence) {
    return damaged(store.path, "ledger entry " + std::to_string(sequence));
}

}  // namespace

Result<ChainedEntry> entryIn(const KitchenStore& store, Query& row) {
    auto entry = entryFrom(row.view(1), row.text(2));
    if (!entry) return fail(unreadable(store, row.number(0)));
    return std::move(*entry);
}

Result<std::vector<ChainedEntry>> entriesIn(const KitchenStore& store, Query& row) {
    EntryQueue queue;
    while (row.next()) queue.add(row);
    ReadEntries read = queue.finish();
    if (read.unreadable != 0) return fail(unreadable(store, read.unreadable));
    return std::move(read.entries);
}

}  // namespace nettare
