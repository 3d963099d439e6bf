#pragma once

#include <string>
#include <string_view>
#include <unordered_map>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// What a chain says of one of its entries after that.
struct Said {
    std::string supersededBy;  ///< UUID; empty while it counts
    std::string successor;     ///< UUID of the shown entry that took its place; may be empty
    std::string whySuperseded;
    std::string whyLeftOut;
    bool leftOut = false;
    bool asWeighed = false;  ///< counts, and the cook said so: it is not to be asked about

    /// Why it does not count, as last said; empty while it does.
    [[nodiscard]] const std::string& reason() const {
        return supersededBy.empty() ? whyLeftOut : whySuperseded;
    }
};

/// Listens to a chain and keeps what its entries say of others. Memory grows with those alone.
class Sayings {
public:
    /// The next entry of the chain. Of two that supersede an entry the first counts. A new reason
    /// or taking in names the entry or what was said of it; a correction that was taken back or
    /// left out is meant itself, else the entry that it corrects. Taking in what counts says
    /// that it is as weighed.
    void hear(const LedgerEntry& entry);

    /// What was said of an entry; null where nothing.
    [[nodiscard]] const Said* about(const std::string& id) const;

private:
    void overrule(const LedgerEntry& entry);
    void takeIn(const LedgerEntry& entry);
    /// What is meant by an id, among that which was said something of; null where nothing.
    Said* meantBy(const std::string& id);

    std::unordered_map<std::string, Said> said_;            ///< by the id of what it is said of
    std::unordered_map<std::string, std::string> subject_;  ///< of what, by the id of what says it
};

}  // namespace nettare
