#include "app/bench/ledger_source.h"

#include "db/kitchen/kitchen.h"

namespace nettare {

LedgerSource ledgerOfFile(std::string path) {
    return [path = std::move(path)](
               const std::function<bool(const ChainedEntry&)>& each) -> Result<void> {
        const auto kitchen = Kitchen::open(path, KitchenAccess::Read);
        if (!kitchen) return fail(kitchen.error());
        return kitchen->readLedger(each);
    };
}

LedgerSource ledgerOf(std::shared_ptr<const std::vector<ChainedEntry>> entries) {
    return [entries = std::move(entries)](
               const std::function<bool(const ChainedEntry&)>& each) -> Result<void> {
        for (const ChainedEntry& chained : *entries)
            if (!each(chained)) break;
        return {};
    };
}

}  // namespace nettare
