#include <catch2/catch.hpp>

#include "command_line/bad_input.h"
#include "command_line/bench_kitchen.h"

using namespace nettare;

TEST_CASE("what went in counts once in a series", "[badinput][bench]") {
    const BenchKitchen bench;
    const std::string before = bench.reading({"leek", "500"});
    const std::string after =
        bench.reading({"leek", "255", "--ratio", "edible / bought", "--before", before});
    const std::vector<std::string> again{"reading",         "Leek",     "240", "--ratio",
                                         "edible / bought", "--before", before};
    checkRun(BenchKitchen::here(again),
             "--before: the reading " + before + " is what went in for " + after.substr(0, 8) +
                 " already, and would count twice; weigh each lot before and after, or give " +
                 after.substr(0, 8) + " another one with --instead-of.");
    // Its successor is the same lot.
    const std::string corrected =
        bench.reading({"leek", "510", "--instead-of", before, "--because", "misread"});
    const Outcome refused = run(BenchKitchen::here(
        {"reading", "leek", "240", "--ratio", "edible / bought", "--before", corrected}));
    CHECK(refused.code == 1);
    CHECK(refused.err.starts_with("nettare: --before: the reading " + corrected +
                                  " is what went in for "));
    // Another series may have it, and this one again where the other no longer counts.
    bench.reading({"leek", "400", "--ratio", "cooked / raw", "--before", corrected});
    bench.reading({"leek", "240", "--instead-of", after, "--because", "slip"});
    CHECK(bench({"series", "leek", "--of", "edible / bought"}).find("\n1 reading · ") !=
          std::string::npos);
}

TEST_CASE("an odd pair is recorded with a caution", "[commandline][bench]") {
    const BenchKitchen bench;
    const auto pair = [&bench](const char* in, const char* out, const char* grams,
                               const char* ratio) {
        const std::string before = bench.reading({in, "500"});
        return bench({"reading", out, grams, "--ratio", ratio, "--before", before});
    };
    CHECK(pair("potato", "fennel", "400", "edible / bought")
              .find("\n  ! “potato” went in and “fennel” came out; where that is a slip, correct "
                    "it with --instead-of\n") != std::string::npos);
    CHECK(pair("leek", "Leek", "800", "edible / bought")
              .find("\n  ! edible / bought is 160 %, and more than what went in cannot come out; "
                    "see what was on the scale both times, and correct the one that is wrong with "
                    "--instead-of\n") != std::string::npos);
    CHECK(pair("tuna", "tuna", "500.1", "drained/total").find("drained/total is 101 %") !=
          std::string::npos);
    CHECK(pair("rice", "rice", "1400", "cooked / raw").find(" ! ") == std::string::npos);
    CHECK(pair("chard", "chard", "500", "edible / bought").find(" ! ") == std::string::npos);
}

TEST_CASE("pieces are counted in series of pieces alone", "[badinput][bench]") {
    const BenchKitchen bench;
    const std::string before = bench.reading({"leek", "500", "--pieces", "3"});
    checkRun(BenchKitchen::here({"reading", "leek", "400", "--ratio", "edible / bought", "--before",
                                 before, "--pieces", "3"}),
             "--pieces: series “leek: edible / bought” weighs no single pieces; name one that "
             "does, or leave “--pieces” out.");
    checkRun(
        BenchKitchen::here({"reading", "rice", "370", "--per-measure", "cup", "--pieces", "2"}),
        "--pieces: series “rice per cup” weighs no single pieces; name one that does, or "
        "leave “--pieces” out.");
    // What is corrected to be of another kind leaves its pieces behind.
    CHECK(bench({"reading", "leek", "90", "--per-measure", "cup", "--instead-of", before,
                 "--because", "was a cup"})
              .starts_with("Recorded 90.0 g ± 0.1 of leek\n"));
}
