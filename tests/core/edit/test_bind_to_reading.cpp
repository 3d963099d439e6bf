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

namespace {

/// A glass bowl of 180.5 g, weighed empty on the pocket scale (0.1 g).
std::string weighGlassBowl(Chain& chain) {
    LedgerEntry bowl;
    bowl.kind = EntryKind::Vessel;
    bowl.vessel = "glass bowl";
    bowl.scale = "pocket scale";
    bowl.unit = "g";
    bowl.readability = decimal("0.1");
    bowl.shown = decimal("180.5");
    return chain.add(bowl);
}

/// What the floor scale (1 g) showed with it.
std::string fillGlassBowl(Chain& chain, const std::string& bowl, const std::string& shown) {
    LedgerEntry filled;
    filled.vessel = "glass bowl";
    filled.vesselTare = decimal("180.5");
    filled.scale = "floor scale";
    filled.readability = decimal("1");
    return chain.showOver(bowl, shown, filled);
}

}  // namespace

TEST_CASE("a vessel that the ledger weighed comes with the scale that it was weighed on",
          "[edit][bench]") {
    Chain chain;
    const auto bowl = weighGlassBowl(chain);
    fillGlassBowl(chain, bowl, "222");
    fillGlassBowl(chain, bowl, "200");
    const auto readings = readingsOf(chain.entries, {});
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    CHECK(draft.way("oil").grams.value() == Approx(41.5));
    // By hand: sqrt(1 + 0.01)/sqrt(12).
    CHECK(draft.way("oil").grams.uncertainty() == Approx(0.29011).epsilon(0.0001));
    CHECK(draft.at("/vessels/glass-bowl/tare") == R"("180.5")");
    CHECK(draft.at("/vessels/glass-bowl/scale") == R"("pocket")");
    CHECK(draft.at("/scales/pocket/readability") == R"("0.1")");
    CHECK(draft.at("/scales/floor-scale/readability") == R"("1")");
    // Another reading over it shares the vessel.
    const std::size_t vessels = draft.count("vessels");
    draft.make(bindToReading(draft.document, "garlic", readings[2], readings[0]));
    CHECK(draft.count("vessels") == vessels);
    LinearForm both = draft.way("oil").grams;
    both.add(draft.way("garlic").grams);
    // The tare counts twice as one source: sqrt(1 + 1 + 4 * 0.01)/sqrt(12).
    CHECK(both.uncertainty() == Approx(0.41231).epsilon(0.0001));
}

TEST_CASE("a reading over a vessel is found again, whichever way the document has its tare",
          "[edit][bench]") {
    Chain chain;
    const auto bowl = weighGlassBowl(chain);
    fillGlassBowl(chain, bowl, "222");
    const auto readings = readingsOf(chain.entries, {});
    BoundDraft draft;
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    const std::size_t bound = draft.count("readings");
    draft.make(bindToReading(draft.document, "garlic", readings[1], readings[0]));
    CHECK(draft.count("readings") == bound);
    // As earlier documents have it: the empty vessel as what the scale showed.
    Json& reading = draft.document.find("readings")->items()->back();
    reading.remove("vessel");
    reading.set("tare", Json{bowl});
    Json empty = Json::object();
    empty.set("id", Json{bowl}).set("scale", Json{"pocket"}).set("shown", Json{"180.5"});
    empty.set("state", Json{"empty"}).set("at", Json{"2026-05-16T15:41:07Z"});
    draft.document.find("indications")->append(empty);
    REQUIRE(readRecipe(draft.document));
    draft.make(bindToReading(draft.document, "oil", readings[1], readings[0]));
    CHECK(draft.count("readings") == bound);
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
