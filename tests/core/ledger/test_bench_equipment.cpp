#include "core/ledger/bench_equipment.h"

#include <catch2/catch.hpp>

#include "ledger_chain.h"

using namespace nettare;

namespace {

LedgerEntry scaleEntry(const std::string& name, const std::string& readability) {
    LedgerEntry entry;
    entry.kind = EntryKind::Scale;
    entry.scale = name;
    entry.unit = "g";
    entry.readability = decimal(readability);
    entry.capacity = decimal("3000");
    return entry;
}

LedgerEntry vesselEntry(const std::string& name, const std::string& tare) {
    LedgerEntry entry = scaleEntry("bench scale", "0.1");
    entry.kind = EntryKind::Vessel;
    entry.capacity.reset();
    entry.vessel = name;
    entry.shown = decimal(tare);
    return entry;
}

bool goodAt(const std::string& mass, const std::string& shown) {
    return isGoodCheck(decimal(mass), decimal(shown), decimal("0.1"));
}

}  // namespace

TEST_CASE("a scale may be off by one, two or three steps, the more the heavier", "[ledger]") {
    // 500 d are 50 g and 2,000 d are 200 g on a scale of 0.1 g.
    CHECK(goodAt("50.0", "50.1"));
    CHECK(goodAt("50.0", "49.9"));
    CHECK_FALSE(goodAt("50.0", "50.2"));
    CHECK(goodAt("50.1", "50.3"));
    CHECK_FALSE(goodAt("50.1", "49.8"));
    CHECK(goodAt("200.0", "200.2"));
    CHECK_FALSE(goodAt("200.0", "199.7"));
    CHECK(goodAt("200.1", "200.4"));
    CHECK(goodAt("1000", "999.7"));
    CHECK_FALSE(goodAt("1000", "1000.4"));
}

TEST_CASE("scales are listed as the ledger last speaks of them, the last used first", "[ledger]") {
    Chain chain;
    chain.add(scaleEntry("bench scale", "1"));
    chain.add(scaleEntry("pocket scale", "0.01"));
    chain.add(scaleEntry("bench scale", "0.1"));
    chain.check("100.0", "100.4");
    const BenchEquipment equipment = equipmentOf(chain.entries);
    REQUIRE(equipment.scales.size() == 2);
    const KnownScale& bench = equipment.scales.front();
    CHECK(bench.name == "bench scale");
    CHECK(bench.readability.text() == "0.1");
    CHECK(bench.capacity == decimal("3000"));
    REQUIRE(bench.lastCheck);
    CHECK(bench.lastCheck->sequence == 4);
    CHECK(bench.lastCheck->shown == decimal("100.4"));
    CHECK_FALSE(bench.lastCheck->good);
    CHECK_FALSE(equipment.scales.back().lastCheck);
}

TEST_CASE("a check keeps the unit it was made in", "[ledger]") {
    Chain chain;
    chain.add(scaleEntry("bench scale", "0.1"));
    chain.check("200", "200.1");
    LedgerEntry ounces = scaleEntry("bench scale", "0.01");
    ounces.unit = "oz";
    chain.add(ounces);
    const BenchEquipment equipment = equipmentOf(chain.entries);
    const KnownScale& scale = equipment.scales.front();
    CHECK(scale.unit == "oz");
    REQUIRE(scale.lastCheck);
    CHECK(scale.lastCheck->unit == "g");
    CHECK(scale.lastCheck->mass == decimal("200"));
}

TEST_CASE("a scale that only a check or a reading names is known by that", "[ledger]") {
    Chain chain;
    chain.check("100.0", "100.0", "borrowed scale");
    chain.show("12.0");
    const BenchEquipment equipment = equipmentOf(chain.entries);
    REQUIRE(equipment.scales.size() == 2);
    CHECK(equipment.scales.front().name == "bench scale");
    CHECK(equipment.scales.back().name == "borrowed scale");
    CHECK(equipment.scales.back().unit == "g");
    CHECK_FALSE(equipment.scales.back().capacity);
}

TEST_CASE("a reading does not overrule what was said of the scale itself", "[ledger]") {
    Chain chain;
    chain.add(scaleEntry("bench scale", "0.5"));
    chain.show("12.0");
    CHECK(equipmentOf(chain.entries).scales.front().readability.text() == "0.5");
}

TEST_CASE("a vessel has the tare it was last weighed with", "[ledger]") {
    Chain chain;
    chain.add(vesselEntry("steel bowl", "212.2"));
    chain.add(vesselEntry("board", "640.5"));
    const auto again = chain.add(vesselEntry("steel bowl", "212.4"));
    const BenchEquipment equipment = equipmentOf(chain.entries);
    REQUIRE(equipment.vessels.size() == 2);
    CHECK(equipment.vessels.front().name == "board");
    const KnownVessel& bowl = equipment.vessels.back();
    CHECK(bowl.tare.text() == "212.4");
    CHECK(bowl.entry == again);
    CHECK(bowl.scale == "bench scale");
    chain.say(EntryKind::Superseded, again, "a spoon was in it");
    CHECK(equipmentOf(chain.entries).vessels.back().tare.text() == "212.2");
}

TEST_CASE("a place of the chain is in doubt between a good check and one that failed", "[ledger]") {
    Chain chain;
    chain.check("100.0", "100.0");  // 1
    chain.check("100.0", "102.0");  // 2
    chain.check("100.0", "100.0");  // 3
    chain.check("100.0", "100.0", "pocket scale");
    CHECK_FALSE(isSuspect(chain.entries, "bench scale", 0));
    CHECK(isSuspect(chain.entries, "bench scale", 1));
    CHECK(isSuspect(chain.entries, "bench scale", 2));
    CHECK_FALSE(isSuspect(chain.entries, "bench scale", 3));
    CHECK_FALSE(isSuspect(chain.entries, "pocket scale", 2));
    CHECK_FALSE(isSuspect(chain.entries, "unheard of", 2));
}

TEST_CASE("a vessel's weighing is found by its tare and its scale", "[ledger][bench]") {
    Chain chain;
    LedgerEntry bowl;
    bowl.kind = EntryKind::Vessel;
    bowl.vessel = "steel bowl";
    bowl.scale = "counter";
    bowl.unit = "g";
    bowl.readability = decimal("0.1");
    bowl.shown = decimal("212.2");
    const auto first = chain.add(bowl);
    LedgerEntry worn = bowl;
    worn.shown = decimal("212.0");
    chain.add(worn);
    CHECK(vesselEntryOf(chain.entries, bowl) == first);
    const auto again = chain.add(bowl);
    CHECK(vesselEntryOf(chain.entries, bowl) == again);
    chain.say(EntryKind::Superseded, again, "it was not dry");
    CHECK(vesselEntryOf(chain.entries, bowl) == first);
    LedgerEntry other = bowl;
    other.scale = "floor scale";
    CHECK(vesselEntryOf(chain.entries, other).empty());
    other = bowl;
    other.readability = decimal("1");
    CHECK(vesselEntryOf(chain.entries, other).empty());
}
