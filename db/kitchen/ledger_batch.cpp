#include "db/kitchen/ledger_batch.h"

#include "core/support/sha256.h"
#include "db/kitchen/stored_entry.h"

namespace nettare {

void LedgerBatch::add(std::int64_t sequence, std::string_view text, std::string_view hash) {
    bytes_ += text;
    const std::size_t textEnd = bytes_.size();
    bytes_ += hash;
    rows_.push_back({sequence, textEnd, bytes_.size()});
}

std::int64_t LedgerBatch::lastSequence() const {
    return rows_.empty() ? sequenceBefore_ : rows_.back().sequence;
}

std::string LedgerBatch::lastHash() const {
    return rows_.empty() ? hashBefore_ : bytes_.substr(rows_.back().textEnd);
}

BatchFindings BatchFindings::of(const LedgerBatch& batch) {
    BatchFindings findings;
    const std::string_view bytes = batch.bytes_;
    std::int64_t sequence = batch.sequenceBefore_;
    std::string_view previous = batch.hashBefore_;
    std::size_t begin = 0;
    for (const LedgerBatch::Row& row : batch.rows_) {
        const std::string_view text = bytes.substr(begin, row.textEnd - begin);
        const std::string_view hash = bytes.substr(row.textEnd, row.hashEnd - row.textEnd);
        if (row.sequence != ++sequence || sha256(text) != hash) break;
        const auto entry = canonicalEntry(text);
        if (!entry || entry->sequence != sequence || entry->previous != previous) break;
        findings.prints.add(entry->entry, sequence, hash);
        ++findings.sound;
        previous = hash;
        begin = row.hashEnd;
    }
    findings.lastHash = previous;
    return findings;
}

}  // namespace nettare
