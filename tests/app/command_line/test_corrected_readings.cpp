#include <catch2/catch.hpp>

#include "command_line/bad_input.h"
#include "command_line/bench_kitchen.h"
#include "core/support/json.h"
#include "db/kitchen/kitchen.h"

using namespace nettare;

TEST_CASE("a correction takes over what it does not say", "[commandline][bench]") {
    const BenchKitchen bench;
    const std::string wrong =
        bench.reading({"plum", "391.2", "--tare", "212.2", "--pieces", "3", "--per-piece", "plum",
                       "--tag", "large", "--tag", "ripe", "--why", "stoned", "--row",
                       "usda-sr 28 09279", "--state", "cooked"});
    const std::string right = bench(
        {"reading", "plum", "395.2", "--instead-of", wrong, "--because", "misread the scale"});
    CAPTURE(right);
    CHECK(right.starts_with("Recorded 183.0 g ± 0.1 of plum, 3 pieces\n"));
    CHECK(withoutIds(right).find("  in the place of id; taken over from it: per plum, [large], "
                                 "[ripe], 3 pieces, tare 212.2 g\n"
                                 "plum per plum\n"
                                 "1 reading of 3 pieces · mean 61") != std::string::npos);
    const auto json = parseJson(bench({"series", "plum", "--tag", "large", "--json"}));
    REQUIRE(json);
    CHECK(*json->find("g") == Json{1.0});
    const auto newest = Kitchen::open("bench.nettare", KitchenAccess::Read)->ledgerPage(0, 1);
    REQUIRE(newest);
    const LedgerEntry& kept = newest->back().entry;
    CHECK(kept.why == "stoned");
    CHECK(kept.row == "usda-sr 28 09279");
    CHECK(kept.state == WeighedState::Cooked);
    CHECK(kept.reason == "misread the scale");
}

TEST_CASE("what a correction says stands", "[commandline][bench]") {
    const BenchKitchen bench;
    bench({"scale", "pocket", "--step", "0.01"});
    const std::string wrong = bench.reading({"plum", "60", "--scale", "counter", "--pieces", "2",
                                             "--per-piece", "plmu", "--tag", "ripe"});
    const std::string right =
        bench({"reading", "plum", "61", "--instead-of", wrong, "--because", "slip", "--per-piece",
               "plum", "--pieces", "1", "--tag", "hard", "--tare", "0"});
    CHECK(right.starts_with("Recorded 61.0 g ± 0.1 of plum\n"));
    CHECK(withoutIds(right).find("  in the place of id\nplum per plum\n") != std::string::npos);
    CHECK(withoutIds(bench({"series"}))
              .find("per plum                                 1 reading   "
                    "last TIME  [hard]\n") != std::string::npos);
}

TEST_CASE("the tare of a correction is the bowl, vessel or jar of what it corrects",
          "[commandline][bench]") {
    const BenchKitchen bench;
    bench({"vessel", "steel bowl", "212.2"});
    const auto corrected = [&bench](const std::string& id, const char* what, const char* gross) {
        return bench({"reading", what, gross, "--instead-of", id, "--because", "misread"});
    };
    const std::string butter = bench.reading({"butter", "340.5", "--vessel", "steel bowl"});
    const std::string garlic = bench.reading({"garlic", "352.7", "--after", butter});
    const std::string jar = bench.reading({"honey jar", "412"});
    const std::string honey = bench.reading({"honey", "371.5", "--from", jar});
    // A vessel that was weighed anew since was another one then.
    bench({"vessel", "steel bowl", "220"});
    CHECK(corrected(garlic, "garlic", "352.5").starts_with("Recorded 12.0 g ± 0.1 of garlic\n"));
    CHECK(corrected(honey, "honey", "370.5").starts_with("Recorded 41.5 g ± 0.1 of honey\n"));
    CHECK(corrected(butter, "butter", "341.5").starts_with("Recorded 129.3 g ± 0.1 of butter\n"));
    CHECK(bench({"ledger"}).find("341.5 g, net 129.3 g  butter") != std::string::npos);
    // What it stood on counts no more: that is to be said anew.
    const std::string oil = bench.reading({"oil", "461.7", "--after", jar});
    bench({"reading", "--take-back", jar, "--because", "another jar"});
    checkRun(BenchKitchen::here({"reading", "oil", "461.8", "--instead-of", oil, "--because", "x"}),
             "--tare: the reading " + jar + " was taken back before; record a new one.");
}

TEST_CASE("tags alone cannot make a correction one of a series", "[commandline][bench]") {
    const BenchKitchen bench;
    const std::string alone = bench.reading({"plum", "60"});
    checkRun(BenchKitchen::here({"reading", "plum", "61", "--instead-of", alone, "--because", "x",
                                 "--tag", "ripe"}),
             "--tag: a reading of a series needs its food and what it is of; name both.");
}

TEST_CASE("a pair whose first weighing was taken back is mended by another one",
          "[commandline][bench]") {
    const BenchKitchen bench;
    const std::string before = bench.reading({"leek", "50", "--state", "as purchased"});
    const std::string after =
        bench.reading({"leek", "40", "--ratio", "edible / bought", "--before", before});
    bench({"reading", "--take-back", before, "--because", "wrong leek"});
    CHECK(bench({"series", "leek"}).find("No reading counts in it.") != std::string::npos);
    const std::string right =
        bench.reading({"leek", "80", "--instead-of", before, "--because", "this is the one"});
    CHECK(bench({"series", "leek"}).find("1 reading · edible / bought 50 ") != std::string::npos);
    checkRun(
        BenchKitchen::here({"reading", "leek", "81", "--instead-of", before, "--because", "again"}),
        "--instead-of: the reading " + before + " was replaced by " + right.substr(0, 8) +
            "; name that one.");
    // The pair goes on with it.
    CHECK(withoutIds(bench({"reading", "leek", "60", "--instead-of", after, "--because", "more"}))
              .find("taken over from it: edible / bought\n"
                    "leek: edible / bought\n1 reading · edible / bought 75 ") != std::string::npos);
}
