#include <catch2/catch.hpp>
#include <cctype>
#include <cmath>
#include <fstream>
#include <iterator>

#include "command_line/bad_input.h"
#include "command_line/bench_kitchen.h"
#include "core/support/json.h"

using namespace nettare;

namespace {

/// Six prawns one by one, each over a zeroed scale.
void weighPrawns(const BenchKitchen& bench) {
    for (const char* grams : {"9.8", "9.6", "10.1", "9.7", "9.9", "9.8"})
        bench.reading({"prawn meat", grams, "--per-piece", "prawn", "--tag", "size 16/20"});
}

std::string fileText(const std::string& name) {
    std::ifstream stream{name, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}};
}

}  // namespace

TEST_CASE("a reading is recorded with its net, its caution and what its series says",
          "[commandline][bench]") {
    const BenchKitchen bench;
    CHECK(withoutIds(bench({"reading", "prawn meat", "271.1", "--tare", "212.2", "--pieces", "6",
                            "--per-piece", "prawn"})) ==
          "Recorded 58.9 g ± 0.1 of prawn meat, 6 pieces\n"
          "  id ID\n"
          "prawn meat per prawn\n"
          "1 reading of 6 pieces · mean 9.8 g · s 1.4 g, assumed\n"
          "One more prawn will weigh 6 to 14 g (95 %).\n"
          "One reading shows no spread, 14 % is assumed; from four readings on the spread is their "
          "own.\n");
    CHECK(withoutIds(bench({"reading", "saffron", "1.2"})) ==
          "Recorded 1.2 g ± 0.1 of saffron\n"
          "  id ID\n"
          "  ! under 20 steps of this scale: rounding alone is 3.4 % of it; weigh several together "
          "or take a finer scale\n");
}

TEST_CASE("butter and garlic go into one bowl, and honey out of its jar", "[commandline][bench]") {
    const BenchKitchen bench;
    CHECK(bench({"vessel", "steel bowl", "212.2"})
              .starts_with("Kept the tare of “steel bowl”: "
                           "212.2 g ("));
    const std::string butter = bench.reading({"butter", "340.5", "--vessel", "steel bowl"});
    CHECK(bench({"reading", "garlic", "352.7", "--after", butter.substr(0, 8)})
              .starts_with("Recorded 12.2 g ± 0.1 of garlic\n"));
    const std::string jar = bench.reading({"honey jar", "412", "--state", "as purchased"});
    CHECK(bench({"reading", "honey", "371.5", "--from", jar})
              .starts_with("Recorded 40.5 g ± 0.1 of honey\n"));
    CHECK(withoutIds(bench({"ledger"})) ==
          "     1  TIME  id  scale       “counter”, steps of 0.1 g\n"
          "     2  TIME  id  vessel      “steel bowl”, tare 212.2 g\n"
          "     3  TIME  id  shown       340.5 g, net 128.3 g  butter\n"
          "     4  TIME  id  shown       352.7 g, net 12.2 g  garlic\n"
          "     5  TIME  id  shown       0.0 g\n"
          "     6  TIME  id  shown       412 g, net 412.0 g  honey jar\n"
          "     7  TIME  id  shown       371.5 g, net 40.5 g  honey\n"
          "7 entries, head HASH\n");
}

TEST_CASE("a series tells of one more prawn and of thirty-six others", "[commandline][bench]") {
    const BenchKitchen bench;
    weighPrawns(bench);
    const std::string page =
        withoutIds(bench({"series", "prawn", "--others", "36", "--within", "5"}));
    CHECK(page ==
          "prawn meat per prawn\n"
          "6 readings · mean 9.82 g · s 0.17 g\n"
          "One more prawn will weigh 9.3 to 10.3 g (95 %).\n"
          "Thirty-six others: 353 ± 7 g.\n"
          "5 more weighings bring thirty-six others to ± 5 g.\n"
          "  id  TIME  9.8 g  [size 16/20]\n"
          "  id  TIME  9.6 g  [size 16/20]\n"
          "  id  TIME  10.1 g  [size 16/20]\n"
          "  id  TIME  9.7 g  [size 16/20]\n"
          "  id  TIME  9.9 g  [size 16/20]\n"
          "  id  TIME  9.8 g  [size 16/20]\n");
    CHECK(bench({"series", "prawn", "--tag", "with head"}) ==
          "prawn meat per prawn\nNo reading counts in it.\n");
    CHECK(withoutIds(bench({"series"})) ==
          "prawn meat per prawn                          6 readings  last TIME  [size 16/20]\n");
}

TEST_CASE("four limes are held against the row that their readings name", "[commandline][bench]") {
    // USDA SR28 09160: 1 lime yields 44 g, n = 12, s = 11.031.
    const BenchKitchen bench;
    for (const char* grams : {"30", "33", "29", "34"})
        bench.reading({"lime juice", grams, "--per-piece", "lime", "--row", "usda-sr 28 09160"});
    const std::string page = bench({"series", "lime juice"});
    CAPTURE(page);
    CHECK(page.find("Your limes are lighter than the table's 44 g, and the difference is real (t = "
                    "−3.68, 13 "
                    "degrees of freedom).") != std::string::npos);
    const auto json = parseJson(bench({"series", "lime juice", "--json"}));
    REQUIRE(json);
    CHECK(*json->find("g") == Json{4.0});
    CHECK(*json->find("mean")->find("value") == Json{31.5});
    CHECK(*json->find("against")->find("verdict") == Json{"differs"});
    CHECK(*json->find("against")->find("t")->number() == Approx(-3.677).margin(0.001));
    CHECK(*json->find("against")->find("nu")->number() == Approx(13.3).margin(0.05));
    CHECK(json->find("readings")->items()->size() == 4);
}

TEST_CASE("a trim is weighed before and after", "[commandline][bench]") {
    const BenchKitchen bench;
    for (const auto& [bought, edible] :
         {std::pair{"486", "382"}, std::pair{"502", "401"}, std::pair{"455", "350.5"}}) {
        const std::string before =
            bench.reading({"fennel", bought, "--state", "as purchased", "--pieces", "2"});
        bench.reading({"fennel", edible, "--ratio", "edible / bought", "--before", before});
    }
    const std::string page = bench({"series", "fennel"});
    CHECK(
        page.starts_with("fennel: edible / bought\n"
                         "3 readings · edible / bought 79 ± 4 %\n"
                         "One more lot of 481 g will give 71 to 86 % (95 %).\n"));
    CHECK(page.ends_with("  350.5 g of 455.0 g\n"));
}

TEST_CASE("what went in is read again, and the pair stays in its series", "[commandline][bench]") {
    const BenchKitchen bench;
    std::string first;
    for (const auto& [bought, edible] : {std::pair{"600", "350"}, std::pair{"500", "300"}}) {
        const std::string before = bench.reading({"fennel", bought, "--tare", "100"});
        if (first.empty()) first = before;
        bench.reading(
            {"fennel", edible, "--tare", "100", "--ratio", "edible / bought", "--before", before});
    }
    const std::string second = bench.reading(
        {"fennel", "560", "--tare", "100", "--instead-of", first, "--because", "misread"});
    CHECK_THAT(bench({"series", "fennel"}), Catch::Contains("\n2 readings · ") &&
                                                Catch::Contains("  250 g of 460 g\n") &&
                                                Catch::EndsWith("  200 g of 400 g\n"));
    bench.reading({"fennel", "540", "--tare", "90", "--instead-of", second, "--because", "again"});
    CHECK_THAT(bench({"series", "fennel"}), Catch::Contains("  250 g of 450 g\n"));
}

TEST_CASE("a reading says that its tare, or what went in, was taken back", "[commandline][bench]") {
    const BenchKitchen bench;
    const std::string bought = bench.reading({"fennel", "600"});
    const std::string edible =
        bench.reading({"fennel", "350", "--ratio", "edible / bought", "--before", bought});
    const std::string bowl = bench.reading({"butter", "340.5"});
    bench.reading({"oil", "361.7", "--after", bowl, "--per-piece", "spoon"});
    bench({"reading", "--take-back", bought, "--because", "two bulbs more"});
    bench({"reading", "--take-back", bowl, "--because", "lid on"});
    CHECK_THAT(bench({"series", "fennel"}),
               Catch::Contains("\nNo reading counts in it.\n") &&
                   Catch::EndsWith("  350.0 g  what went in was taken back: two bulbs more\n"));
    CHECK_THAT(bench({"series", "oil"}),
               Catch::Contains("1 reading") &&
                   Catch::EndsWith("  21.2 g  its tare was taken back: lid on\n"));
    const auto json = parseJson(bench({"series", "fennel", "--json"}));
    const Json& reading = json->find("readings")->items()->front();
    CHECK(*reading.find("counts") == Json{false});
    CHECK(*reading.find("before_taken_back") == Json{"two bulbs more"});
    CHECK(*parseJson(bench({"series", "oil", "--json"}))
               ->find("readings")
               ->items()
               ->front()
               .find("tare_taken_back") == Json{"lid on"});
    CHECK_THAT(bench({"ledger"}),
               Catch::Contains("fennel; what went in was taken back: two bulbs more\n") &&
                   Catch::Contains("oil; its tare was taken back: lid on\n"));
    bench({"reading", "--leave-out", edible, "--because", "peel among it"});
    CHECK_THAT(bench({"series", "fennel"}), Catch::EndsWith("  left out: peel among it\n"));
}

TEST_CASE("a series is held against the ceiling of a recipe that follows it",
          "[commandline][bench]") {
    const BenchKitchen bench;
    std::ofstream{"skewers.json"} << skewers();
    bench({"add", "skewers.json"});
    const std::string page = bench({"series", "prawns, peeled", "--for", "Charred"});
    CHECK_THAT(page, Catch::Contains("\nFor “Charred prawn & fennel skewers”, at most 150 kcal "
                                     "energy per portion: even 1000 more are not enough; "));
    const auto json = parseJson(bench({"series", "prawns, peeled", "--for", "charred", "--json"}));
    REQUIRE(json);
    const Json& target = json->find("targets")->items()->front();
    CHECK(*target.find("enough") == Json{"none suffices"});
    CHECK(*target.find("at_most") == Json{"150"});

    bench.reading({"squid", "12.0", "--per-piece", "tube", "--scale", "counter"});
    const Outcome refused = run(BenchKitchen::here({"series", "squid", "--for", "Charred"}));
    CHECK(refused.code == 1);
    CHECK_THAT(refused.err, Catch::Contains("counts nothing by the series squid per tube"));
}

TEST_CASE("a series is pooled with an earlier one", "[commandline][bench]") {
    const BenchKitchen bench;
    const auto weigh = [&bench](const char* food, const char* grams, const char* tag) {
        bench.reading({food, grams, "--per-piece", "prawn", "--tag", tag});
    };
    for (const char* grams : {"9.6", "9.8", "9.7", "9.9"}) weigh("prawn meat", grams, "2025");
    for (const char* grams : {"10.4", "10.8"}) weigh("prawn meat", grams, "2026");
    for (const char* grams : {"9.0", "9.2"}) weigh("wild prawns", grams, "2025");
    // By hand: s^2 = 0.05/3 in 2025, 0.08 in 2026; (0.05 + 0.08)/4.
    const std::vector<std::string> shown{"series", "prawn meat", "--tag", "2026"};
    const auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), shown.begin(), shown.end());
        return bench(more);
    };
    const std::string page = with({"--pool-tag", "2025"});
    CAPTURE(page);
    CHECK(page.find("2 readings · mean 10.60 g · s 0.18 g, pooled\n") != std::string::npos);
    CHECK(page.find("The spread of 0.18 g is pooled with that of prawn meat, 2025 (4 readings, s "
                    "0.13 g); 4 degrees of freedom.\n") != std::string::npos);
    const auto json = parseJson(with({"--pool-tag", "2025", "--json"}));
    REQUIRE(json);
    CHECK(*json->find("spread") == Json{"pooled"});
    CHECK(*json->find("pooled_with")->find("name") == Json{"prawn meat, 2025"});
    CHECK(*json->find("pooled_with")->find("g") == Json{4.0});
    CHECK(*json->find("pooled_with")->find("nu") == Json{3.0});
    CHECK(*json->find("pooled_with")->find("s")->number() == Approx(std::sqrt(0.05 / 3)));
    CHECK(*json->find("s")->number() == Approx(std::sqrt(0.0325)));
    CHECK(with({"--pool-with", "prawn meat"}).find("that of prawn meat without 2026 (4 readings") !=
          std::string::npos);
    for (const char* wild : {"wild", "wild prawns: prawn"})
        CHECK(with({"--pool-with", wild}).find("that of wild prawns (2 readings") !=
              std::string::npos);
    CHECK(with({"--pool-with", "wild", "--pool-tag", "2025"})
              .find("that of wild prawns, 2025 (2 readings") != std::string::npos);
    const auto usual = parseJson(with({"--pool", "--json"}));
    CHECK(*usual->find("pooled_with")->find("name") == Json{"the assumed spread"});
    CHECK(*usual->find("pooled_with")->find("s")->number() == Approx(0.14 * 10.6));
    CHECK(parseJson(with({"--json"}))->find("pooled_with") == nullptr);
}

TEST_CASE("a ratio is pooled as well", "[commandline][bench]") {
    const BenchKitchen bench;
    for (const auto& [bought, edible] : {std::pair{"200", "165"}, std::pair{"200", "135"}}) {
        const std::string before = bench.reading({"fennel", bought, "--state", "as purchased"});
        bench.reading({"fennel", edible, "--ratio", "edible / bought", "--before", before});
    }
    const std::string page = bench({"series", "fennel", "--pool"});
    CAPTURE(page);
    CHECK(page.find("2 readings · edible / bought 75 ± 8 %, pooled\n") != std::string::npos);
    const auto json = parseJson(bench({"series", "fennel", "--pool", "--json"}));
    REQUIRE(json);
    // 14 % of the quarter that is lost.
    CHECK(*json->find("pooled_with")->find("s")->number() == Approx(0.035));
    CHECK(*json->find("nu") == Json{9.0});
}

TEST_CASE("what is taken back or left out stays to be seen, with its reason",
          "[commandline][bench]") {
    const BenchKitchen bench;
    const std::string slip = bench.reading({"prawn meat", "97", "--per-piece", "prawn"});
    const std::string odd = bench.reading({"prawn meat", "14", "--per-piece", "prawn"});
    const std::string fine = bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    CHECK(bench({"reading", "--take-back", slip.substr(0, 8), "--because", "slip of the hand"}) ==
          "Taken back " + slip.substr(0, 8) + ": slip of the hand\n");
    bench({"reading", "--leave-out", odd, "--because", "two frozen together"});
    CHECK(withoutIds(bench({"series", "prawn meat"}))
              .ends_with("  id  TIME  97.0 g  taken back: slip of the hand\n"
                         "  id  TIME  14.0 g  left out: two frozen together\n"
                         "  id  TIME  9.8 g\n"));
    bench({"reading", "--take-in", odd, "--because", "it is one prawn"});
    bench.reading({"prawn meat", "9.9", "--per-piece", "prawn", "--instead-of", fine, "--because",
                   "misread"});
    CHECK(bench({"series", "prawn meat"}).find("\n2 readings · ") != std::string::npos);
    CHECK(bench({"verify"}).ends_with("No fault found.\n"));
}

TEST_CASE("an odd reading that is as weighed is not asked about again", "[commandline][bench]") {
    const BenchKitchen bench;
    weighPrawns(bench);
    bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    const std::string odd = bench.reading({"prawn meat", "14.2", "--per-piece", "prawn"});
    CHECK(bench({"series", "prawn meat"}).find("Is 14.2 g as weighed?") != std::string::npos);
    CHECK(parseJson(bench({"series", "prawn meat", "--json"}))->find("odd") != nullptr);
    CHECK(bench({"reading", "--as-weighed", odd}) ==
          "Counts " + odd.substr(0, 8) + ": it is as weighed\n");
    CHECK(bench({"series", "prawn meat"}).find("as weighed?") == std::string::npos);
    const auto json = parseJson(bench({"series", "prawn meat", "--json"}));
    CHECK(json->find("odd") == nullptr);
    CHECK(*json->find("readings")->items()->back().find("as_weighed") == Json{true});
    CHECK(bench({"reading", "prawn meat", "9.9", "--per-piece", "prawn"}).find("as weighed?") ==
          std::string::npos);
    CHECK(bench({"verify"}).ends_with("No fault found.\n"));
    checkRun(BenchKitchen::here({"reading", "--as-weighed", odd}),
             "bench.nettare: the reading " + odd + " counts already; nothing is to be done.");
}

TEST_CASE("only a reading that counts in a series is said to be as weighed",
          "[commandline][bench]") {
    const BenchKitchen bench;
    weighPrawns(bench);
    const std::string leftOut = bench.reading({"prawn meat", "14.2", "--per-piece", "prawn"});
    const std::string alone = bench.reading({"prawn meat", "40.1"});
    bench({"reading", "--leave-out", leftOut, "--because", "two frozen together"});
    checkRun(BenchKitchen::here({"reading", "--as-weighed", leftOut}),
             "--as-weighed: the reading " + leftOut +
                 " is left out of its series; take it in first, with a reason of its own "
                 "(--take-in).");
    checkRun(BenchKitchen::here({"reading", "--as-weighed", alone}),
             "--as-weighed: the reading " + alone +
                 " is of no series, so that none asks about it; nothing is to be done.");
    CHECK(bench({"series", "prawn meat"}).find("left out: two frozen together") !=
          std::string::npos);
    bench({"reading", "--take-back", leftOut, "--because", "another bag"});
    checkRun(BenchKitchen::here({"reading", "--as-weighed", leftOut}),
             "--as-weighed: the reading " + leftOut + " was taken back before; record a new one.");
}

TEST_CASE("every interval of a series carries u and its freedom", "[commandline][bench]") {
    const BenchKitchen bench;
    weighPrawns(bench);
    const auto json = parseJson(bench({"series", "prawn meat", "--others", "36", "--json"}));
    REQUIRE(json);
    // By hand: s = sqrt(0.1483/5) = 0.17224 g of six single prawns.
    const double s = 0.17224;
    const auto member = [&json](const char* of, const char* key) {
        return json->find(of)->find(key)->number();
    };
    for (const auto& [of, u] :
         {std::pair{"mean", s / std::sqrt(6.0)}, std::pair{"next", s * std::sqrt(1 + 1 / 6.0)},
          std::pair{"others", s * std::sqrt(36 * 36 / 6.0 + 36)}}) {
        CAPTURE(of);
        CHECK(*member(of, "u") == Approx(u).epsilon(0.0005));
        CHECK(*member(of, "nu") == Approx(5));
        // t(0.975; 5) = 2.571
        CHECK(*member(of, "high") - *member(of, "value") == Approx(2.571 * u).epsilon(0.0005));
        CHECK(*member(of, "value") - *member(of, "low") == Approx(2.571 * u).epsilon(0.0005));
    }
    const Json* drift = json->find("drift");
    REQUIRE(drift != nullptr);
    CHECK(*drift->find("per_reading")->number() / *drift->find("u")->number() ==
          Approx(*drift->find("t")->number()));
    CHECK(*drift->find("nu") == Json{4.0});
    CHECK(*drift->find("low")->number() < *drift->find("high")->number());
}

TEST_CASE("a reading is named by its id in letters of either case, also cut short",
          "[commandline][bench]") {
    const BenchKitchen bench;
    const auto shout = [](std::string id) {
        for (char& c : id) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
        return id;
    };
    const std::string bowl = bench.reading({"butter", "340.5"});
    CHECK(bench({"reading", "garlic", "352.7", "--after", shout(bowl)})
              .starts_with("Recorded 12.2 g"));
    CHECK(bench({"reading", "oil", "361.7", "--after", shout(bowl).substr(0, 8)})
              .starts_with("Recorded 21.2 g"));
    const std::string jar = bench.reading({"honey jar", "412"});
    CHECK(bench({"reading", "honey", "371.5", "--from", shout(jar).substr(0, 8)})
              .starts_with("Recorded 40.5 g"));
    const std::string bought = bench.reading({"fennel", "486"});
    CHECK(bench({"reading", "fennel", "382", "--ratio", "edible / bought", "--before",
                 shout(bought).substr(0, 8)})
              .starts_with("Recorded 382.0 g"));
    CHECK(bench({"reading", "--take-back", shout(jar), "--because", "slip"}) ==
          "Taken back " + jar.substr(0, 8) + ": slip\n");
}

TEST_CASE("a scale that gets other steps says which it had", "[commandline][bench]") {
    const BenchKitchen bench;
    CHECK(bench({"scale", "counter", "--step", "1"}) ==
          "scale   “counter”, steps of 1 g; not checked yet\n"
          "  ! known before with steps of 0.1 g, up to 3000 g; readings keep what it was then\n");
    CHECK(bench({"scale", "pocket", "--step", "0.01"}) ==
          "scale   “pocket”, steps of 0.01 g; not checked yet\n");
    bench({"scale", "pocket", "--mass", "50", "--showed", "50"});
    CHECK(withoutIds(bench({"scale", "pocket", "--step", "0.01"})) ==
          "scale   “pocket”, steps of 0.01 g; checked TIME: showed 50 g for 50 g\n");
}

TEST_CASE("a scale is checked with a known mass, and a failed check doubts its readings",
          "[commandline][bench]") {
    const BenchKitchen bench;
    bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    CHECK(bench({"scale", "counter", "--mass", "200", "--showed", "200,1"}) ==
          "“counter” is good: it showed 200.1 g for 200 g.\n");
    CHECK(bench({"scale", "counter", "--mass", "200", "--showed", "202"})
              .starts_with("“counter” failed: it showed 202 g for 200 g. What it showed since "));
    CHECK(withoutIds(bench({"scale"})) ==
          "scale   “counter”, steps of 0.1 g, up to 3000 g; check FAILED TIME: showed 202 g for "
          "200 g\n");
    bench.reading({"prawn meat", "9.9", "--per-piece", "prawn"});
    const std::string page = bench({"series", "prawn meat"});
    CHECK(page.ends_with("in doubt: a check of the scale failed\n"));
    CHECK(bench({"ledger"}).find("“counter” showed 202 g for 200 g: FAILED\n") !=
          std::string::npos);
}

TEST_CASE("a ledger is written as CSV, all or nothing", "[commandline][bench]") {
    const BenchKitchen bench;
    bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    CHECK(bench({"ledger", "--csv", "--out", "ledger.csv"}) == "Ledger written to ledger.csv\n");
    const std::string csv = fileText("ledger.csv");
    CHECK(csv == bench({"ledger", "--csv"}));
    CHECK(csv.starts_with("sequence,time,kind,"));
    checkRun(
        BenchKitchen::here({"ledger", "--csv", "--out", "nowhere/ledger.csv"}),
        "nowhere/ledger.csv: this file cannot be written, the folder does not exist; nothing was "
        "changed there.");
}

TEST_CASE("a printed head is found in the ledger or told to be lost", "[commandline][bench]") {
    const BenchKitchen bench;
    bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    const std::string verified = bench({"verify"});
    const std::size_t at = verified.find("Head of the ledger: ");
    REQUIRE(at != std::string::npos);
    const std::string head = verified.substr(at + 20, 64);
    bench.reading({"prawn meat", "9.9", "--per-piece", "prawn"});
    CHECK(bench({"verify", "--head", head}).ends_with("No fault found.\n"));
    const std::string other(64, 'a');
    const Outcome lost = run(BenchKitchen::here({"verify", "--head", other}));
    CHECK(lost.code == 1);
    CHECK(lost.out.ends_with("bench.nettare: the ledger has no entry with the hash " + other +
                             "; it is not the one that was printed, or its end is lost: compare it "
                             "with a backup.\n1 fault found.\n"));
    checkRun(BenchKitchen::here({"verify", "--head", "12ab"}),
             "--head: “12ab” is no SHA-256 hash; write its 64 digits 0 to 9 and a to f.");
}

TEST_CASE("a check is told in the unit of its scale then", "[commandline][bench]") {
    const BenchKitchen bench;
    bench({"scale", "counter", "--mass", "200", "--showed", "200.1"});
    CHECK(withoutIds(bench({"scale", "counter", "--step", "0.01", "--unit", "oz"})) ==
          "scale   “counter”, steps of 0.01 oz; checked TIME: showed 200.1 g for 200 g\n"
          "  ! known before with steps of 0.1 g, up to 3000 g; readings keep what it was then\n");
}

TEST_CASE("the table's weight of a piece is found by size and in the plural",
          "[commandline][bench]") {
    const BenchKitchen bench;
    const auto weigh = [&bench](std::vector<std::string> more) {
        more.insert(more.begin(), "reading");
        return bench(std::move(more));
    };
    const std::string none =
        "\nThe table has no weight of one ear; it has cup, large ear, medium ear, small ear.\n";
    const std::vector<std::string> ear{"corn", "110",   "--per-piece",
                                       "ear",  "--row", "usda-sr 28 11167"};
    CHECK(weigh(ear).find(none) != std::string::npos);
    CHECK(bench({"series", "corn"}).find(none) != std::string::npos);
    const std::vector<std::string> medium{
        "maize", "110", "--per-piece", "ears", "--row", "usda-sr 28 11167", "--tag", "medium"};
    CHECK(weigh(medium).find("With one reading no difference from the table's 102 g can be told") !=
          std::string::npos);
    CHECK(weigh({"lime juice", "36", "--per-piece", "limes", "--row", "usda-sr 28 09160"})
              .find("no difference from the table's 44 g can be told") != std::string::npos);
    CHECK(weigh({"carrot", "110", "--per-measure", "cup", "--row", "usda-sr 28 11124"})
              .find("\nThe table has several weights of one cup: cup, ") != std::string::npos);
}

TEST_CASE("a net is as fine as its scale, also where zeros were left out", "[commandline][bench]") {
    const BenchKitchen bench;
    CHECK(bench({"reading", "fennel", "350", "--tare", "100"})
              .starts_with("Recorded 250.0 g ± 0.1 of fennel\n"));
    bench({"scale", "hanging", "--step", "5"});
    bench({"vessel", "net bag", "15.3", "--scale", "counter"});
    // By hand: 1.96 sqrt(5² + 0.1²)/sqrt(12) = 2.83.
    CHECK(bench({"reading", "onions", "350", "--vessel", "net bag", "--scale", "hanging"})
              .starts_with("Recorded 334.7 g ± 2.8 of onions\n"));
    CHECK(bench({"reading", "onions", "350", "--scale", "hanging"})
              .starts_with("Recorded 350 g ± 4 of onions\n"));
}
