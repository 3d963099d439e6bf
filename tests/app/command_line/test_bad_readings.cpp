#include <catch2/catch.hpp>

#include "command_line/bad_input.h"
#include "command_line/bench_kitchen.h"
#include "db/kitchen/kitchen.h"

using namespace nettare;

namespace {

struct BadReading {
    std::vector<std::string> arguments;
    std::string sentence;
};

}  // namespace

TEST_CASE("a reading that cannot be is refused in one sentence, and the ledger stays as it was",
          "[badinput][bench]") {
    const BenchKitchen bench;
    bench({"vessel", "steel bowl", "212.2"});
    bench({"scale", "letter scale", "--unit", "oz", "--step", "0.05"});
    const std::string known =
        bench.reading({"prawn meat", "9.8", "--scale", "counter", "--per-piece", "prawn"});
    const std::string ounces = bench.reading({"butter", "4", "--scale", "letter scale"});
    const std::string none = "00000000";
    const std::string notThere =
        ": the ledger has no reading 00000000; name one by its id, or by how that begins.";
    const std::vector<BadReading> cases{
        {{"reading", "butter", "12"},
         "--scale: there are several scales, “letter scale”, “counter”; say which one showed it."},
        {{"reading", "butter", "12", "--scale", "pocket"},
         "--scale: no scale here is called “pocket”; it can be “letter scale”, “counter”, or add "
         "it "
         "first."},
        {{"reading", "butter", "12.34", "--scale", "counter"},
         "GROSS: the scale shows steps of 0.1 g, and 12.34 g is none; type what it showed."},
        {{"reading", "butter", "3000.1", "--scale", "counter"},
         "GROSS: the scale takes 3000 g at most, and 3000.1 g is more; weigh in two parts."},
        {{"reading", "butter", "12 g", "--scale", "counter"},
         "GROSS: “12 g” is no decimal number; write it with a point, such as “12.5”, with at most "
         "six digits before and six after it."},
        {{"reading", "butter", "12", "--tare", "20", "--scale", "counter"},
         "GROSS: reading “butter” has a tare of 20 above its gross of 12; exchange the two or "
         "correct one."},
        {{"reading", "butter", "12", "--tare", "12", "--scale", "counter", "--per-piece", "pat"},
         "GROSS: “butter” holds nothing to weigh; correct the reading."},
        {{"reading", "butter", "300", "--vessel", "pan", "--scale", "counter"},
         "--vessel: no vessel here is called “pan”; it can be “steel bowl”, or weigh it empty "
         "first."},
        {{"reading", "butter", "12", "--vessel", "steel bowl", "--scale", "letter scale"},
         "--vessel: the tare of “steel bowl” is known in g, and the scale shows oz; weigh it empty "
         "on this scale."},
        {{"reading", "garlic", "12", "--after", none, "--scale", "counter"}, "--after" + notThere},
        {{"reading", "--take-back", none, "--because", "slip"}, "--take-back" + notThere},
        {{"reading", "garlic", "12", "--after", ounces, "--scale", "counter"},
         "--after: reading “" + ounces +
             "” takes gross and tare from scales with different units; weigh both on one scale."},
        {{"reading", "--take-in", known, "--because", "it is fine"},
         "--take-in: the reading " + known + " counts already; nothing is to be done."},
        {{"reading", "lime", "12", "--scale", "counter", "--row", "usda-sr 28 99999"},
         "--row: no table at hand has the food usda-sr 28 99999 (table, release, number); correct "
         "them."},
        {{"scale", "pocket", "--step", "0"}, "--step: “0” is not more than zero; correct it."},
        {{"series", "squid"},
         "FOOD: there is no series of “squid”; there are series of “prawn meat per prawn”."},
    };
    const auto entries = Kitchen::open("bench.nettare", KitchenAccess::Read)->ledgerEnd();
    for (const BadReading& bad : cases) checkRun(BenchKitchen::here(bad.arguments), bad.sentence);
    const auto after = Kitchen::open("bench.nettare", KitchenAccess::Read)->ledgerEnd();
    CHECK(after->hash == entries->hash);
}

TEST_CASE("what does not count any more cannot be taken back again", "[badinput][bench]") {
    const BenchKitchen bench;
    const std::string slip = bench.reading({"prawn meat", "97", "--per-piece", "prawn"});
    bench({"reading", "--take-back", slip, "--because", "slip of the hand"});
    checkRun(BenchKitchen::here({"reading", "--take-back", slip, "--because", "again"}),
             "--take-back: the reading " + slip + " was taken back before; record a new one.");
}

TEST_CASE("a series is named with its piece where a food has several", "[badinput][bench]") {
    const BenchKitchen bench;
    bench.reading({"fennel", "240", "--per-piece", "bulb"});
    bench.reading({"fennel", "87", "--per-measure", "cup"});
    checkRun(BenchKitchen::here({"series", "fennel"}),
             "FOOD: there are several series, “fennel per cup”, “fennel per bulb”; say which one "
             "with its piece, measure or “edible / bought”.");
    CHECK(bench({"series", "fennel", "--of", "cup"}).starts_with("fennel per cup\n"));
}

TEST_CASE("a series that cannot be pooled with says why", "[badinput][bench]") {
    const BenchKitchen bench;
    for (const char* grams : {"9.6", "9.8"})
        bench.reading({"prawn meat", grams, "--per-piece", "prawn", "--tag", "2026"});
    bench.reading({"wild", "9.1", "--per-piece", "prawn"});
    bench.reading({"fennel", "87", "--per-measure", "cup"});
    const auto refused = [](std::vector<std::string> more, const std::string& sentence) {
        more.insert(more.begin(), {"series", "prawn meat"});
        checkRun(BenchKitchen::here(more), sentence);
    };
    refused({"--pool-with", "squid"},
            "--pool-with: there is no series of “squid”; there are series of “fennel per cup”, "
            "“prawn meat per prawn”, “wild per prawn”.");
    refused({"--pool-with", "fennel"},
            "--pool-with: “fennel per cup” is no series of grams per prawn; pool with one that "
            "is.");
    refused({"--pool-with", "wild"},
            "--pool-with: fewer than two readings of “wild” count, so it shows no spread to "
            "pool with; weigh more of it, or pool with another series.");
    refused({"--pool-tag", "2026"},
            "--pool-tag: these readings of “prawn meat, 2026” are among those that are shown; "
            "split the series with --tag, or pool with another one.");
    refused({"--pool-with", "prawn meat"},
            "--pool-with: these readings of “prawn meat” are among those that are shown; split the "
            "series with --tag, or pool with another one.");
    refused({"--tag", "2026", "--pool-tag", "2025"},
            "--pool-tag: fewer than two readings of “prawn meat, 2025” count, so it shows no "
            "spread to pool with; weigh more of it, or pool with another series.");
}

TEST_CASE("a kitchen without a scale, vessel or series says what comes first",
          "[badinput][bench]") {
    const ScratchKitchen folder;
    REQUIRE(Kitchen::create("bench.nettare", "2026-05-16T12:00:00+02:00"));
    checkRun(BenchKitchen::here({"reading", "butter", "12"}),
             "--scale: there is no scale here yet; add one with the steps that it shows.");
    checkRun(BenchKitchen::here({"series", "squid"}),
             "FOOD: there is no series of “squid”, nor of anything else; record a reading with its "
             "food and what it is per.");
    REQUIRE(run(BenchKitchen::here({"scale", "counter", "--step", "1"})).code == 0);
    checkRun(
        BenchKitchen::here({"reading", "butter", "12", "--vessel", "bowl"}),
        "--vessel: no vessel here is called “bowl”, nor has another one a tare; weigh it empty "
        "first.");
    CHECK(run(BenchKitchen::here({"series"})).out == "This kitchen has no series yet.\n");
    const ScratchKitchen other;
    REQUIRE(Kitchen::create("bench.nettare", "2026-05-16T12:00:00+02:00"));
    CHECK(run(BenchKitchen::here({"scale"})).out == "This kitchen has no scale yet.\n");
    CHECK(run(BenchKitchen::here({"ledger"})).out == "The ledger is empty.\n");
}
