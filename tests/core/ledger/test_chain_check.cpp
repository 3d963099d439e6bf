#include "core/ledger/chain_check.h"

#include <catch2/catch.hpp>

#include "core/support/sha256.h"
#include "ledger_chain.h"

using namespace nettare;

namespace {

/// Five weighings with their hashes.
std::vector<ChainedEntry> hashed() {
    Chain chain;
    const auto bowl = chain.show("212.2");
    for (const char* shown : {"222.0", "231.8", "241.7"}) chain.showOver(bowl, shown);
    chain.say(EntryKind::Superseded, chainId(4), "slip of the hand");
    std::string previous;
    for (ChainedEntry& chained : chain.entries) {
        chained.previous = previous;
        chained.hash = sha256(writeJson(entryJson(chained.entry, chained.sequence, previous)));
        previous = chained.hash;
    }
    return chain.entries;
}

ChainState stateOf(const std::vector<ChainedEntry>& entries) {
    ChainCheck check;
    for (const ChainedEntry& chained : entries) check.look(chained);
    return check.state();
}

}  // namespace

TEST_CASE("a chain as it was recorded is intact and says where it ends", "[ledger]") {
    const auto entries = hashed();
    const ChainState state = stateOf(entries);
    CHECK(state.isIntact());
    CHECK(state.entries == 5);
    CHECK(state.head == entries.back().hash);
    CHECK(stateOf({}).isIntact());
    CHECK(stateOf({}).entries == 0);
}

TEST_CASE("an edit, a gap, an insertion and another order break a chain at the first of them",
          "[ledger]") {
    auto edited = hashed();
    edited[1].entry.shown = decimal("221.0");
    edited[3].entry.shown = decimal("1.0");
    CHECK(stateOf(edited).broken == 2);
    auto without = hashed();
    without.erase(without.begin() + 2);
    CHECK(stateOf(without).broken == 3);
    auto inserted = hashed();
    inserted.insert(inserted.begin() + 3, inserted[2]);
    CHECK(stateOf(inserted).broken == 4);
    auto turned = hashed();
    std::swap(turned[0], turned[1]);
    CHECK(stateOf(turned).broken == 1);
    auto other = hashed();
    other[2].hash = std::string(64, 'a');
    CHECK(stateOf(other).broken == 3);
    CHECK(stateOf(other).head == hashed().back().hash);
}
