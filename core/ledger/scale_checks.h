#pragma once

#include <map>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// The checks of all scales, ready to be asked for many places of the chain.
class ScaleChecks {
public:
    ScaleChecks() = default;
    /// Among entries of any kind, by sequence. A check that one of them supersedes does not count.
    explicit ScaleChecks(const std::vector<ChainedEntry>& entries);

    /// Whether what the scale showed there is in doubt: the first check of it after that place
    /// failed, or the last one before it did.
    [[nodiscard]] bool isSuspect(const std::string& scale, long long sequence) const;

private:
    struct Outcome {
        long long sequence;
        bool good;
    };
    std::map<std::string, std::vector<Outcome>, std::less<>> byScale_;
};

/// The ids that entries of the kind Superseded speak of.
[[nodiscard]] std::unordered_set<std::string_view> overruledIds(
    const std::vector<ChainedEntry>& entries);

}  // namespace nettare
