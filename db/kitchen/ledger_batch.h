#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "db/kitchen/ledger_prints.h"

namespace nettare {

/// Rows of the ledger as they lie in the file, one after the other.
class LedgerBatch {
public:
    /// After that sequence and hash; 0 and empty at the beginning of the chain.
    LedgerBatch(std::int64_t sequence, std::string hash)
        : sequenceBefore_{sequence}, hashBefore_{std::move(hash)} {}

    void add(std::int64_t sequence, std::string_view text, std::string_view hash);
    [[nodiscard]] std::size_t size() const { return rows_.size(); }
    [[nodiscard]] std::int64_t lastSequence() const;
    [[nodiscard]] std::string lastHash() const;

private:
    friend struct BatchFindings;
    struct Row {
        std::int64_t sequence;
        std::size_t textEnd, hashEnd;  ///< where they end in `bytes_`
    };
    std::int64_t sequenceBefore_;
    std::string hashBefore_;
    std::string bytes_;  ///< text, hash, text, hash ...
    std::vector<Row> rows_;
};

/// What a look at a batch finds. Each row is held against its own hash and the row before it, so
/// batches may be looked at in any order, and by several threads.
struct BatchFindings {
    std::size_t sound = 0;  ///< so many rows from the first on are as they were recorded
    std::string lastHash;   ///< of the last of those
    LedgerPrints prints;    ///< of those

    [[nodiscard]] static BatchFindings of(const LedgerBatch& batch);
};

}  // namespace nettare
