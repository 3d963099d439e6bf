#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "command_line/bad_input.h"
#include "command_line/bench_kitchen.h"
#include "command_line/scratch_kitchen.h"
#include "db/kitchen/kitchen.h"

using namespace nettare;

// What scripts, slips and strange hands give to the commands of the bench.

namespace {

struct StrangeCall {
    std::vector<std::string> arguments;
    std::string sentence;
};

const std::string kHelp = "; “nettare --help” explains them.";
const std::string kInvisible =
    " holds an invisible control character, such as a line break or a change of writing direction; "
    "remove it.";
const std::string kNoNumber =
    " is no decimal number; write it with a point, such as “12.5”, with at most six digits before "
    "and six after it.";

std::string bytesIn(const std::string& name) {
    std::ifstream stream{name, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

long long entriesOf(const std::string& kitchen) {
    return Kitchen::open(kitchen, KitchenAccess::Read)->ledgerEnd()->sequence;
}

}  // namespace

TEST_CASE(
    "an argument of the bench that is there with nothing in it is asked for, never passed over",
    "[badinput][bench]") {
    const BenchKitchen bench;
    const auto calls = std::vector<std::vector<std::string>>{
        {"reading", "butter", "12", "--vessel", ""},
        {"reading", "butter", "12", "--tare", " "},
        {"reading", "butter", "12", "--after", ""},
        {"reading", "butter", "12", "--from", ""},
        {"reading", "butter", "12", "--row", ""},
        {"reading", "butter", "12", "--scale", ""},
        {"reading", "butter", "12", "--why", ""},
        {"reading", "butter", "12", "--instead-of", ""},
        {"reading", "--take-back", ""},
        {"reading", "butter", "12", "--per-piece", " "},
        {"series", "butter", "--tag", ""},
        {"series", "butter", "--of", ""},
        {"scale", "counter", "--step", ""},
        {"verify", "--head", ""},
        {"ledger", "--out", ""},
    };
    for (const auto& call : calls)
        checkRun(BenchKitchen::here(call),
                 call[call.size() - 2] + " is empty, say what is meant" + kHelp, 2);
    for (const char* nothing : {"", "  "}) {
        checkRun(BenchKitchen::here({"reading", nothing, "12"}),
                 "WHAT is empty, say what is meant" + kHelp, 2);
        checkRun(BenchKitchen::here({"reading", "butter", nothing}),
                 "GROSS is empty, say what is meant" + kHelp, 2);
        checkRun(BenchKitchen::here({"scale", nothing, "--step", "1"}),
                 "NAME is empty, say what is meant" + kHelp, 2);
        checkRun(BenchKitchen::here({"vessel", nothing, "12"}),
                 "NAME is empty, say what is meant" + kHelp, 2);
        checkRun(BenchKitchen::here({"series", nothing}),
                 "FOOD is empty, say what is meant" + kHelp, 2);
    }
    CHECK(entriesOf("bench.nettare") == 1);
}

TEST_CASE("what cannot stand in an entry is said of the argument it came from",
          "[badinput][bench]") {
    const BenchKitchen bench;
    const std::string known = bench.reading({"prawn meat", "9.8"});
    const std::string huge(8'000'000, 'a');
    const std::string cut = "the text “" + std::string(60, 'a') + "…” is longer than ";
    const std::vector<StrangeCall> calls{
        {{"reading", "bu\ttter", "12"}, "WHAT: the text “bu tter”" + kInvisible},
        {{"reading", "\xff\xfe", "12"}, "WHAT: the text “��”" + kInvisible},
        {{"reading", "butter", "12", "--why", "\x1b[31mred"},
         "--why: the text “ [31mred”" + kInvisible},
        {{"reading", "butter", "12", "--per-piece", "pat", "--tag", "a\nb"},
         "--tag: the text “a b”" + kInvisible},
        {{"reading", "butter", "12", "--per-piece", "p\x07"},
         "the name of the series: the text “p ”" + kInvisible},
        {{"reading", "--take-back", known, "--because", "a\nb"},
         "--because: the text “a b”" + kInvisible},
        {{"reading", huge, "12"}, "WHAT: " + cut + "200 characters; shorten it."},
        {{"reading", "butter", "12", "--why", huge},
         "--why: " + cut + "400 characters; shorten it."},
        {{"scale", huge, "--step", "1"}, "NAME: " + cut + "200 characters; shorten it."},
        {{"vessel", huge, "12"}, "NAME: " + cut + "200 characters; shorten it."},
        {{"scale", "a\nb", "--step", "1"}, "NAME: the text “a b”" + kInvisible},
        {{"scale", "fine", "--step", "0.0000001"}, "--step: “0.0000001”" + kNoNumber},
    };
    for (const StrangeCall& call : calls)
        checkRun(BenchKitchen::here(call.arguments), call.sentence);
    CHECK(entriesOf("bench.nettare") == 3);
}

TEST_CASE("numbers that are none, or that no scale and no vessel has, are refused",
          "[badinput][bench]") {
    const BenchKitchen bench;
    bench.reading({"prawn meat", "9.8", "--per-piece", "prawn"});
    for (const std::string& number :
         std::vector<std::string>{"nan", "inf", "1e3", "0x10", "twelve"})
        checkRun(BenchKitchen::here({"reading", "butter", number}),
                 std::string{"GROSS: “"}.append(number).append("”").append(kNoNumber));
    const std::string digits(5'000'000, '1');
    checkRun(BenchKitchen::here({"reading", "butter", digits}),
             "GROSS: the amount “" + std::string(60, '1') + "…” has too many digits; shorten it.");
    const std::vector<StrangeCall> refused{
        {{"scale", "counter", "--mass", "5000", "--showed", "2999"},
         "--mass: the scale takes 3000 g at most, and 5000 g is more; weigh in two parts."},
        {{"scale", "third", "--mass", "200", "--showed", "200"},
         "NAME: no scale here is called “third”; it can be “counter”, or add it first."},
        {{"vessel", "bowl", "0"}, "SHOWN: “0” is not more than zero; correct it."},
        {{"vessel", "bowl", "-12"}, "SHOWN: “-12” is not more than zero; correct it."},
    };
    for (const StrangeCall& call : refused)
        checkRun(BenchKitchen::here(call.arguments), call.sentence);
    const std::vector<StrangeCall> wrong{
        {{"scale", "odd", "--step", "1", "--capacity", "0.5"},
         "--capacity is not more than --step, look for “Max” on the plate of the scale"},
        {{"series", "prawn", "--others", "nan"},
         "--others: “nan” is no whole number from 1 to 1000000"},
        {{"series", "prawn", "--others", "36", "--within", "nan"},
         "--within: “nan” is no number from 0.001 to 1000000"},
        {{"series", "prawn", "--others", "36", "--within", "inf"},
         "--within: “inf” is no number from 0.001 to 1000000"},
    };
    for (const StrangeCall& call : wrong)
        checkRun(BenchKitchen::here(call.arguments), call.sentence + kHelp, 2);
    CHECK(entriesOf("bench.nettare") == 3);
}

TEST_CASE("names are kept without the blanks around them", "[bench]") {
    const BenchKitchen bench;
    CHECK(
        bench({"vessel", "  steel bowl ", "212.2"}).starts_with("Kept the tare of “steel bowl”: "));
    CHECK(bench({"reading", " prawn meat ", "271.1", "--vessel", "steel bowl", "--per-piece",
                 " prawn", "--tag", " large "})
              .starts_with("Recorded 58.9 g ± 0.1 of prawn meat\n"));
    CHECK(withoutIds(bench({"series"})) ==
          "prawn meat per prawn                          1 reading   last TIME  [large]\n");
}

TEST_CASE("no result takes the place of a kitchen or of what lies beside one",
          "[badinput][bench]") {
    const BenchKitchen bench;
    bench.reading({"prawn meat", "9.8"});
    const std::string before = bytesIn("bench.nettare");
    std::filesystem::create_symlink("bench.nettare", "link.csv");
    const std::string why =
        ": this file cannot be written, it is a kitchen or another database; nothing was changed "
        "there.";
    for (const std::string& target :
         std::vector<std::string>{"bench.nettare", "./bench.nettare", "link.csv"})
        checkRun(BenchKitchen::here({"ledger", "--csv", "--out", target}), target + why);
    // A name beside it would be taken for the kitchen's log.
    for (const std::string& beside :
         std::vector<std::string>{"bench.nettare-wal", "bench.nettare-journal"}) {
        checkRun(BenchKitchen::here({"ledger", "--out", beside}), beside + why);
        CHECK_FALSE(std::filesystem::exists(beside));
    }
    CHECK(bytesIn("bench.nettare") == before);
    CHECK(bench({"verify"}).ends_with("No fault found.\n"));
    CHECK(bench({"ledger", "--csv", "--out", "bench.csv"}) == "Ledger written to bench.csv\n");
}

TEST_CASE("while another holds the kitchen, a reading is refused and says who does",
          "[badinput][bench]") {
    const BenchKitchen bench;
    const auto other = Kitchen::open("bench.nettare", KitchenAccess::Write);
    REQUIRE(other);
    const Outcome refused = run(BenchKitchen::here({"reading", "butter", "12"}));
    CHECK(refused.code == 1);
    CHECK(refused.err.find("this kitchen is in work elsewhere, ") != std::string::npos);
    CHECK(refused.err.ends_with("; close it there and open it again.\n"));
    // To look is free.
    CHECK(bench({"scale"}).starts_with("scale   “counter”"));
    CHECK(entriesOf("bench.nettare") == 1);
}

TEST_CASE("what a series is asked has an answer or a refusal", "[badinput][bench]") {
    const BenchKitchen bench;
    const std::string before = bench.reading({"leek", "500"});
    bench.reading({"leek", "400", "--ratio", "edible / bought", "--before", before});
    for (const char* grams : {"9.8", "9.6", "10.1", "9.7", "9.9", "9.8"})
        bench.reading({"prawn", grams, "--per-piece", "prawn"});
    checkRun(BenchKitchen::here({"series", "leek", "--others", "5", "--within", "1"}),
             "--others: series “leek: edible / bought” weighs no single pieces; name one that "
             "does, or leave “--others” out.");
    CHECK(bench({"series", "prawn", "--others", "36", "--within", "5,0"})
              .find("5 more weighings bring thirty-six others to ± 5 g.") != std::string::npos);
    for (const char* count : {"0", "0.5", "-1", "1e3", "1000001", "nan"})
        checkRun(BenchKitchen::here({"series", "prawn", "--others", count}),
                 std::string{"--others: “"} + count +
                     "” is no whole number from 1 to 1000000; "
                     "“nettare --help” explains them.",
                 2);
}
