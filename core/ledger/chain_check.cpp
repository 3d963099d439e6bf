#include "core/ledger/chain_check.h"

#include "core/support/sha256.h"

namespace nettare {

void ChainCheck::look(const ChainedEntry& chained) {
    const long long sequence = ++state_.entries;
    const bool follows = chained.sequence == sequence && chained.previous == state_.head;
    state_.head = chained.hash;
    if (!state_.isIntact()) return;
    const Json json = entryJson(chained.entry, chained.sequence, chained.previous);
    if (!follows || sha256(writeJson(json)) != chained.hash) state_.broken = sequence;
}

}  // namespace nettare
