#include <algorithm>
#include <deque>
#include <future>
#include <thread>

#include "db/kitchen/ledger_batch.h"
#include "db/kitchen/verify_parts.h"

namespace nettare {

namespace {

constexpr std::size_t kRowsTogether = 1000;

/// Looks at batches of the chain beside the thread that reads them, and takes what was found in
/// their order, up to the first row that is not sound.
class ChainCheck {
public:
    explicit ChainCheck(KitchenCheck& check) : check_{check} {}

    void give(LedgerBatch batch) {
        const std::size_t rows = batch.size();
        looked_.push_back({rows, std::async(std::launch::async, [given = std::move(batch)] {
                               return BatchFindings::of(given);
                           })});
        if (looked_.size() > atOnce_) takeFirst();
    }
    void finish() {
        while (!looked_.empty()) takeFirst();
    }

    [[nodiscard]] bool isSound() const { return sound_; }
    [[nodiscard]] const LedgerPrints& prints() const { return prints_; }

private:
    struct Looked {
        std::size_t rows = 0;
        std::future<BatchFindings> findings;
    };

    void takeFirst() {
        const std::size_t rows = looked_.front().rows;
        const BatchFindings found = looked_.front().findings.get();
        looked_.pop_front();
        if (!sound_) return;
        sound_ = found.sound == rows;
        prints_.append(found.prints);
        check_.ledgerEntries += found.sound;
        if (found.sound > 0) check_.ledgerHead = found.lastHash;
    }

    KitchenCheck& check_;
    std::deque<Looked> looked_;
    LedgerPrints prints_;
    bool sound_ = true;
    const std::size_t atOnce_ = std::max(1U, std::thread::hardware_concurrency());
};

/// Reads the whole ledger, unless it is broken early.
void readChain(KitchenStore& store, ChainCheck& chain) {
    Query row = store.query("SELECT sequence, entry, hash FROM ledger ORDER BY sequence");
    LedgerBatch batch{0, ""};
    while (chain.isSound() && row.next()) {
        batch.add(row.number(0), row.view(1), row.view(2));
        if (batch.size() < kRowsTogether) continue;
        LedgerBatch next{batch.lastSequence(), batch.lastHash()};
        chain.give(std::exchange(batch, std::move(next)));
    }
    chain.give(std::move(batch));
    chain.finish();
}

void addBroken(const KitchenStore& store, std::int64_t sequence, KitchenCheck& check) {
    check.faults.push_back(
        store.error(ErrorCode::LedgerBroken).with("found", std::to_string(sequence)));
}

/// The end of the chain against what was noted beside it.
void checkNotedEnd(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("SELECT sequence, hash FROM ledger_end");
    if (!row.next()) {
        check.faults.push_back(
            store.error(ErrorCode::PagesDamaged).with("reason", "the table ledger_end has no row"));
        return;
    }
    const auto head = static_cast<std::int64_t>(check.ledgerEntries);
    if (row.number(0) != head)
        addBroken(store, std::min(row.number(0), head) + 1, check);
    else if (row.text(1) != check.ledgerHead)
        addBroken(store, head, check);
}

/// Ends that were lost before the program went on.
void checkLostEnds(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("SELECT min(next) FROM ledger_lost HAVING min(next) IS NOT NULL");
    while (row.next()) addBroken(store, row.number(0), check);
}

/// Whether a list of the ledger has an entry after `head`: what was there is cut off, and the noted
/// end with it.
bool isListedAfter(KitchenStore& store, std::int64_t head) {
    Query row = store.query(
        "SELECT ?1 < max(coalesce((SELECT max(sequence) FROM ledger_reference), 0), "
        "coalesce((SELECT max(sequence) FROM ledger_equipment), 0), "
        "coalesce((SELECT max(sequence) FROM series_entry), 0), "
        "coalesce((SELECT max(newest) FROM series), 0))");
    row.with(head);
    return row.next() && row.number(0) != 0;
}

}  // namespace

void checkLedger(KitchenStore& store, KitchenCheck& check) {
    ChainCheck chain{check};
    readChain(store, chain);
    if (!chain.isSound()) {
        addBroken(store, static_cast<std::int64_t>(check.ledgerEntries) + 1, check);
        return;
    }
    const std::size_t faults = check.faults.size();
    checkLostEnds(store, check);
    if (check.faults.size() == faults) checkNotedEnd(store, check);
    if (check.faults.size() > faults) return;
    const auto head = static_cast<std::int64_t>(check.ledgerEntries);
    if (isListedAfter(store, head)) return addBroken(store, head + 1, check);
    for (const std::string& reason : wrongIndexes(store, chain.prints()))
        check.faults.push_back(store.error(ErrorCode::PagesDamaged).with("reason", reason));
}

}  // namespace nettare
