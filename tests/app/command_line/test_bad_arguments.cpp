#include <catch2/catch.hpp>
#include <ostream>
#include <sstream>
#include <streambuf>

#include "app/command_line/run.h"
#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"

namespace {

struct BadCall {
    std::vector<std::string> arguments;
    std::string what;
};

const std::string kCommands =
    "figures, path, statement, panel, foods, food, label, line, demo, import, add, list, "
    "revisions, reading, scale, vessel, series, ledger, verify, backup";

/// A stream that takes nothing, as a full disk does.
class Full : public std::streambuf {
    int_type overflow(int_type) override { return traits_type::eof(); }
    std::streamsize xsputn(const char*, std::streamsize) override { return 0; }
};

}  // namespace

TEST_CASE("a wrong call is answered with one sentence, and exit code 2", "[badinput]") {
    const std::vector<BadCall> calls{
        {{}, "name a command: " + kCommands},
        {{"cook"}, "“cook” is no command, name one of: " + kCommands},
        {{"fig"}, "“fig” is no command, name one of: " + kCommands},
        {{"--nope"}, "“--nope” is no command, name one of: " + kCommands},
        {{"x\ny\u202e"}, "“x y ” is no command, name one of: " + kCommands},
        {{"figures"}, "RECIPE is required"},
        {{"--kitchen", "k", "figures", "--json"}, "RECIPE is required"},
        {{"figures", "--all"},
         "--all goes through a kitchen, name it: nettare --kitchen FILE figures --all"},
        {{"--kitchen", "k", "figures", "a", "--all"},
         "--all takes every recipe of the kitchen, name none beside it"},
        {{"--kitchen", "k", "figures", "--all", "--revision", "1"},
         "--all takes every revision of a recipe, leave --revision out"},
        {{"--kitchen", "k", "figures", "a", "--jobs", "2"}, "--jobs requires --all"},
        {{"--kitchen", "k", "figures", "--all", "--of", "mean"},
         "--all gives figures of this batch, as they were kept, leave --of out"},
        {{"--kitchen", "k", "figures", "--all", "--jobs", "0"},
         "--jobs: Value 0 not in range 1 to 256"},
        {{"statement"}, "RECIPE is required"},
        {{"foods"}, "WORDS is required"},
        {{"food"}, "NUMBER is required"},
        {{"label"}, "DOC is required"},
        {{"label", "a.json", "b.json"}, "The following argument was not expected: b.json"},
        {{"label", "a.json", "--keep"},
         "--keep works on a kitchen, name it: nettare --kitchen FILE label DOC --keep"},
        {{"label", "a.json", "--of", "yogurt"}, "--of requires --keep"},
        {{"label", "a.json", "--photo", "pack.jpg"}, "--photo requires --keep"},
        {{"label", "a.json", "--write-photo", "pack.jpg"},
         "--write-photo works on a kitchen, name it with --kitchen FILE"},
        {{"--kitchen", "k", "label", "a.json", "--keep", "--write-photo", "b"},
         "--keep excludes --write-photo"},
        {{"--kitchen", "k", "label", "a.json", "--keep", "--json"},
         "--keep has no JSON, leave --json out"},
        {{"import"}, "KIND is required"},
        {{"import", "sr28"}, "PATH is required"},
        {{"import", "xls", "a.xls"}, "KIND: xls not in {sr28,fdc,csv}"},
        {{"import", "sr28", "a.zip", "--mapping", "m.json"}, "--mapping is for csv, leave it out"},
        {{"--kitchen", "k", "import", "sr28", "a.zip"},
         "“import” works on no kitchen, leave --kitchen out"},
        {{"path", "a.json"}, "COMPONENT is required"},
        {{"path", "a.json", "NA", "b.json"}, "The following argument was not expected: b.json"},
        {{"path", "a.json", "NA", "--of", "all"}, "--of: all not in {mean,batch,piece}"},
        {{"figures", "a.json", "--of", "lot"}, "--of: lot not in {mean,batch,piece}"},
        {{"path", "a.json", "NA", "--revision", "1"},
         "a document has no revisions, --revision needs --kitchen FILE"},
        {{"figures", "a.json", "--per", "week"}, "--per: week not in {piece,portion,100g,batch}"},
        {{"figures", "a.json", "--per", "a\nb"}, "--per: a b not in {piece,portion,100g,batch}"},
        {{"figures", "a.json", "--nope"}, "The following argument was not expected: --nope"},
        {{"statement", "a.json", "b.json"}, "The following argument was not expected: b.json"},
        {{"statement", "a.json", "--pieces="}, "--pieces: 1 required TEXT missing"},
        {{"add", "a.json"}, "“add” works on a kitchen, name it: nettare --kitchen FILE add"},
        {{"list"}, "“list” works on a kitchen, name it: nettare --kitchen FILE list"},
        {{"revisions", "a"},
         "“revisions” works on a kitchen, name it: nettare --kitchen FILE revisions"},
        {{"reading", "butter", "12"},
         "“reading” works on a kitchen, name it: nettare --kitchen FILE reading"},
        {{"--kitchen", "k", "reading", "butter"}, "a reading is WHAT and GROSS, name both"},
        {{"--kitchen", "k", "reading", "butter", "12", "--take-back", "a", "--because", "slip"},
         "--take-back, --leave-out, --take-in and --as-weighed speak of a reading that is there, "
         "leave WHAT and "
         "GROSS out"},
        {{"--kitchen", "k", "reading", "--take-back", "a"}, "--because TEXT is missing, say why"},
        {{"--kitchen", "k", "reading", "butter", "12", "--because", "slip"},
         "--because says why a reading no longer counts, leave it out"},
        {{"--kitchen", "k", "reading", "butter", "12", "--tag", "soft"},
         "--tag splits a series, name it with --per-piece, --per-measure or --ratio"},
        {{"--kitchen", "k", "reading", "butter", "12", "--tare", "1", "--vessel", "bowl"},
         "--tare excludes --vessel"},
        {{"--kitchen", "k", "reading", "fennel", "12", "--ratio", "edible / bought"},
         "--ratio requires --before"},
        {{"--kitchen", "k", "reading", "fennel", "12", "--pieces", "0"},
         "--pieces: Value 0 not in range 1 to 9999"},
        {{"--kitchen", "k", "scale", "--step", "1"}, "the scale is not named, name it first"},
        {{"--kitchen", "k", "scale", "counter"},
         "--step keeps a scale, --mass and --showed check it, give one of them"},
        {{"--kitchen", "k", "scale", "counter", "--mass", "200"}, "--mass requires --showed"},
        {{"--kitchen", "k", "vessel", "bowl"}, "SHOWN is required"},
        {{"--kitchen", "k", "series", "prawn", "--within", "5"}, "--within requires --others"},
        {{"verify"}, "“verify” works on a kitchen, name it: nettare --kitchen FILE verify"},
        {{"backup", "b"}, "“backup” works on a kitchen, name it: nettare --kitchen FILE backup"},
        {{"figures", "a.json", "--revision", "1"},
         "a document has no revisions, --revision needs --kitchen FILE"},
        {{"--kitchen", "k", "foods", "fennel"}, "“foods” works on no kitchen, leave --kitchen out"},
        {{"--kitchen=k", "demo"}, "“demo” works on no kitchen, leave --kitchen out"},
        {{"--kitchen", "", "list"}, "--kitchen names no file, give the path of one"},
        {{"--kitchen", "k", "backup", ""}, "“backup” names no file, give the path of a new one"},
        {{"--kitchen", "k"}, "name a command: " + kCommands},
        {{"--kitchen", "k", "cook"}, "“cook” is no command, name one of: " + kCommands},
        {{"--kitchen", "k", "add"}, "DOC is required"},
        {{"--kitchen", "k", "backup"}, "FILE is required"},
        {{"--kitchen", "k", "figures", "a", "--revision", "0"},
         "--revision: Value 0 not in range 1 to 1000000"},
        {{"--kitchen", "k", "figures", "a", "--revision", "two"},
         "--revision: Value two not in range 1 to 1000000"},
    };
    for (const BadCall& call : calls)
        checkRun(call.arguments, call.what + "; “nettare --help” explains them.", 2);
}

TEST_CASE("numbers of pieces that cannot be are refused with their option", "[badinput]") {
    const std::vector<BadCall> calls{
        {{"a"}, "“a” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
        {{"1e3"}, "“1e3” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
        {{"0"}, "the amount “0” is not more than zero; correct it."},
        {{"-1"}, "the amount “-1” is not more than zero; correct it."},
        {{"1,,2"}, "the text is empty; write what is meant."},
        {{"1-2"}, "a range, “1-2”, cannot be used here; write one number."},
        {{"1.500"}, "“1.500” can mean 1.500 or 1500; write 1500 or leave the zeros out."},
        {{"1234567890"}, "the amount “1234567890” has too many digits; shorten it."},
    };
    for (const BadCall& call : calls)
        checkRefused(skewers(), "--pieces: " + call.what,
                     {"statement", "doc.json", "--pieces=" + call.arguments.front()});
}

TEST_CASE("a component that is none is refused with its option", "[badinput]") {
    for (const std::string& component : std::vector<std::string>{"XYZ", "enerc_kcal"})
        checkRefused(skewers(),
                     "--component: “" + component +
                         "” is no component that can be used here; write an INFOODS tagname such "
                         "as ENERC_KCAL.",
                     {"statement", "doc.json", "--component", component});
}

TEST_CASE("the path of what is no component is refused with one sentence", "[badinput]") {
    for (const std::string& component : std::vector<std::string>{"XYZ", "energy"})
        checkRefused(skewers(),
                     "COMPONENT: “" + component +
                         "” is no component that can be used here; write an INFOODS tagname such "
                         "as ENERC_KCAL.",
                     {"path", "doc.json", component});
}

TEST_CASE("a search for nothing is refused", "[badinput]") {
    checkRun({"foods", " "}, "WORDS: the text is empty; write what is meant.");
}

TEST_CASE("a search that finds nothing says so, on one line", "[badinput]") {
    const Outcome outcome = run({"foods", "zz\u202ezz\u009b", "' OR 1=1"});
    CHECK(outcome.code == 0);
    CHECK(outcome.out == "No food of the table matches “zz zz  ' OR 1=1”.\n");
}

TEST_CASE("results that cannot be written are not passed over in silence", "[badinput]") {
    const ScratchKitchen kitchen;
    kitchen.write("doc.json", skewers());
    Full nowhere;
    std::ostream out{&nowhere};
    std::ostringstream err;
    CHECK(nettare::runCommandLine({"figures", "doc.json"}, out, err) == 1);
    CHECK(err.str() ==
          "nettare: standard output: this file cannot be written, the disk may be full; nothing "
          "was changed there.\n");
}
