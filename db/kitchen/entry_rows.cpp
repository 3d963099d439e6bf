#include "db/kitchen/entry_rows.h"

#include <algorithm>
#include <deque>
#include <future>
#include <iterator>
#include <string_view>

#include "db/kitchen/stored_entry.h"

namespace nettare {

namespace {

constexpr std::size_t kReadTogether = 1000;
constexpr std::size_t kReadAtOnce = 3;

/// Rows one after the other in one piece of memory, since many small ones cost more than reading.
class RawEntries {
public:
    void add(Query& row) {
        const std::string_view text = row.view(1);
        const std::string_view hash = row.view(2);
        bytes_.append(text).append(hash);
        ends_.push_back({row.number(0), text.size(), hash.size()});
    }
    [[nodiscard]] std::size_t size() const { return ends_.size(); }
    template <class Each>
    void each(const Each& take) const {
        std::string_view rest = bytes_;
        for (const Row& row : ends_) {
            take(row.sequence, rest.substr(0, row.text), rest.substr(row.text, row.hash));
            rest.remove_prefix(row.text + row.hash);
        }
    }

private:
    struct Row {
        std::int64_t sequence = 0;
        std::size_t text = 0, hash = 0;  ///< lengths
    };
    std::string bytes_;
    std::vector<Row> ends_;
};

struct ReadEntries {
    std::vector<ChainedEntry> entries;
    std::int64_t unreadable = 0;  ///< the first that is none; 0 where all are
};

ReadEntries readAll(const RawEntries& rows) {
    ReadEntries read;
    read.entries.reserve(rows.size());
    rows.each([&read](std::int64_t sequence, std::string_view text, std::string_view hash) {
        if (read.unreadable != 0) return;
        if (auto entry = entryFrom(text, std::string{hash}))
            read.entries.push_back(std::move(*entry));
        else
            read.unreadable = sequence;
    });
    return read;
}

/// Takes rows and gives entries, in the same order.
class EntryQueue {
public:
    explicit EntryQueue(std::size_t about) { all_.entries.reserve(about); }
    void add(Query& row) {
        rows_.add(row);
        if (rows_.size() == kReadTogether) readBeside();
    }
    /// The rest is read here: most often it is all there is.
    ReadEntries finish() {
        ReadEntries last = readAll(rows_);
        while (!beside_.empty()) takeFirst();
        take(std::move(last));
        return std::move(all_);
    }

private:
    void readBeside() {
        beside_.push_back(std::async(std::launch::async,
                                     [rows = std::exchange(rows_, {})] { return readAll(rows); }));
        if (beside_.size() > kReadAtOnce) takeFirst();
    }
    void takeFirst() {
        take(beside_.front().get());
        beside_.pop_front();
    }
    void take(ReadEntries part) {
        if (all_.unreadable == 0) all_.unreadable = part.unreadable;
        if (all_.entries.capacity() == 0)
            all_.entries = std::move(part.entries);
        else
            std::ranges::move(part.entries, std::back_inserter(all_.entries));
    }

    RawEntries rows_;
    std::deque<std::future<ReadEntries>> beside_;
    ReadEntries all_;
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

Result<std::vector<ChainedEntry>> entriesIn(const KitchenStore& store, Query& row,
                                            std::size_t about) {
    EntryQueue queue{about};
    while (row.next()) queue.add(row);
    ReadEntries read = queue.finish();
    if (read.unreadable != 0) return fail(unreadable(store, read.unreadable));
    return std::move(read.entries);
}

}  // namespace nettare
