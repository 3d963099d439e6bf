#include <catch2/catch.hpp>
#include <cmath>

#include "bound_draft.h"
#include "core/edit/series_edits.h"
#include "ledger_chain.h"

using namespace nettare;

TEST_CASE("a jar weighed before and after is a reading of the line", "[edit][bench]") {
    Chain chain;
    LedgerEntry poured;
    poured.takenFrom = chain.show("412.6");
    chain.show("371.1", poured);
    const auto readings = readingsOf(chain.entries, {});
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    CHECK(draft.way("oil").grams.value() == Approx(41.5));
    CHECK(draft.at("/readings/" + chainId(2)) == R"({"gross":")" + chainId(1) + R"(","id":")" +
                                                     chainId(2) + R"(","tare":")" + chainId(2) +
                                                     R"("})");
}

TEST_CASE("a reading over a vessel of known tare brings the vessel", "[edit][bench]") {
    Chain chain;
    LedgerEntry filled;
    filled.vessel = "glass bowl";
    filled.vesselTare = decimal("180.5");
    chain.show("222.0", filled);
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readingsOf(chain.entries, {}).front(), {}));
    CHECK(draft.way("oil").grams.value() == Approx(41.5));
    CHECK(draft.at("/vessels/glass-bowl/tare") == R"("180.5")");
    CHECK(draft.at("/scales/bench-scale/readability") == R"("0.1")");
}

TEST_CASE("an indication without a tare is no weight of a line", "[edit][bench]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    chain.showOver(bowl, "222.0");
    const auto readings = readingsOf(chain.entries, {});
    const auto bare = bindToReading(demo::skewers(), "oil", readings[0], {});
    CHECK(bare.error().code == ErrorCode::UnknownReference);
    const auto without = bindToReading(demo::skewers(), "oil", readings[1], {});
    CHECK(without.error().code == ErrorCode::UnknownReference);
}

TEST_CASE("lines weighed one after the other into one bowl share an indication", "[edit][bench]") {
    Chain chain;
    auto last = chain.show("300.0");
    for (const char* shown : {"350.0", "365.0"}) last = chain.showOver(last, shown);
    const auto readings = readingsOf(chain.entries, {});
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    draft.make(bindToReading(draft.document, "garlic", readings[2], readings[1]));
    LinearForm both = draft.way("oil").grams;
    both.add(draft.way("garlic").grams);
    // d/sqrt(12) of the first and the last indication; the one between cancels.
    CHECK(both.value() == Approx(65));
    CHECK(both.uncertainty() == Approx(0.1 * std::sqrt(2.0 / 12)));
    CHECK(draft.count("indications") == demo::skewers().find("indications")->items()->size() + 3);
}

TEST_CASE("“zero now” is an indication with a rounding of its own", "[edit][bench]") {
    Chain chain;
    LedgerEntry zero;
    zero.state = WeighedState::Empty;
    chain.showOver(chain.show("0.0", zero), "41.5");
    const auto readings = readingsOf(chain.entries, {});
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    CHECK(draft.way("oil").grams.value() == Approx(41.5));
    CHECK(draft.way("oil").grams.uncertainty() == Approx(0.1 * std::sqrt(2.0 / 12)));
}
