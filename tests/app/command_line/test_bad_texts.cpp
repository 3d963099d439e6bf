#include <catch2/catch.hpp>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "core/support/text.h"

using nettare::replaced;

namespace {

/// A text of the skewers replaced by another, and the sentence after the file's name.
struct BadText {
    std::string from, to, rest;
};

const std::string kLookThere =
    "; look there for a missing or doubled comma, quote or bracket, or for a comment.";
const std::string kComplete =
    "the document ends too early, a quote or bracket is still open; complete it or take a whole "
    "copy.";

const std::vector<BadText> kBadTexts{
    {R"("version": 1)", R"("version": NaN)",
     ", line 3, column 14: this is not JSON any more at “\"version\": NaN”" + kLookThere},
    {R"("version": 1)", R"("version": Infinity)",
     ", line 3, column 14: this is not JSON any more at “\"version\": Infinity”" + kLookThere},
    {R"("version": 1)", R"("version": 1e999)",
     ", line 3, column 18: the number “1e999” is too large; write a smaller one."},
    {R"("version": 1,)", R"("version": 1, // one)",
     ", line 3, column 17: this is not JSON any more at “\"version\": 1, //”" + kLookThere},
    {R"("version")", "'version'",
     ", line 3, column 3: this is not JSON any more at “'version'”" + kLookThere},
    {R"({"pieces": "2"})", R"({"pieces": "2",})",
     ", line 8, column 29: this is not JSON any more at “on\": {\"pieces\": \"2\",}”" + kLookThere},
    {"Charred", "Char\nred",
     ", line 4, column 17: this is not JSON any more at “\"title\": \"Char”" + kLookThere},
    {"Charred", "Char\\qred",
     ", line 4, column 18: this is not JSON any more at “\"title\": \"Char\\qred”" + kLookThere},
    {R"("version": 1,)", R"("version": 1, "version": 1,)",
     ": the key “version” stands here twice; remove one."},
    {R"({"id": "oil", "amount")", R"({"id": "oil", "id": "oil", "amount")",
     ", /lines/2: the key “id” stands here twice; remove one."},
    {"fennel skewers", "fen\xff skewers",
     ", line 4: this line is not UTF-8 text; save the file as UTF-8."},
    {R"("version": 1)", "\"version\": \xc3\xa9",
     ", line 3, column 14: this is not JSON any more at “\"version\": é”" + kLookThere},
};

std::string utf16(const std::string& ascii, const std::string& mark) {
    std::string wide = mark;
    for (const char c : ascii) (wide += c) += '\0';
    return wide;
}

}  // namespace

TEST_CASE("text that is not JSON is refused where it breaks", "[badinput]") {
    for (const BadText& bad : kBadTexts)
        checkRefused(replaced(skewers(), bad.from, bad.to), "doc.json" + bad.rest);
    checkRefused(skewers() + "x",
                 "doc.json, line 80, column 1: this is not JSON any more at “x”" + kLookThere);
    checkRefused("Barley patties\n150 g barley",
                 "doc.json, line 1, column 1: this is not JSON any more at “Barley”" + kLookThere);
}

TEST_CASE("a document that is cut off or empty is said to be so", "[badinput]") {
    const std::string whole = skewers();
    checkRefused(whole.substr(0, whole.size() - 3), "doc.json, line 78: " + kComplete);
    checkRefused(whole.substr(0, whole.find("Charred") + 3), "doc.json, line 4: " + kComplete);
    checkRefused("{", "doc.json, line 1: " + kComplete);
    for (const std::string& nothing : std::vector<std::string>{"", "  \n\n"})
        checkRefused(nothing, "doc.json: this file is empty; give the path of a recipe document.");
}

TEST_CASE("another encoding is named, a byte order mark of UTF-8 is passed over", "[badinput]") {
    const std::string other =
        "doc.json, line 1: this line is not UTF-8 text; save the file as UTF-8.";
    checkRefused(utf16(skewers().substr(0, 20), "\xff\xfe"), other);
    checkRefused(utf16("{}", ""), other);
    const ScratchKitchen kitchen;
    kitchen.write("doc.json", "\xef\xbb\xbf" + skewers());
    CHECK(run({"figures", "doc.json"}).code == 0);
}

TEST_CASE("documents that are too deep, too wide or too large are refused at once", "[badinput]") {
    std::string deepest;
    for (int i = 0; i < 60; ++i) deepest += "/0";
    for (const std::string& deep : {std::string(10000, '['), std::string(3'000'000, '[')})
        checkRefused(deep, "doc.json, " + deepest +
                               "…: the document is nested deeper than 64 levels, a recipe never "
                               "is; take brackets away.");
    std::string wide = "{";
    for (int i = 0; i < 1001; ++i) (wide += i == 0 ? "\"" : ",\"") += std::to_string(i) + "\":0";
    checkRefused(wide + "}", "doc.json: there are more than 1000 entries; remove some.");
    std::string many = "[0";
    for (int i = 0; i < 150'001; ++i) many += ",0";
    checkRefused(many + "]", "doc.json: there are more than 150000 entries; remove some.");
    checkRefused("{\"title\": \"" + std::string(5'000'000, 'x') + "\"}",
                 "doc.json: this file is larger than 4 MiB, too large for a recipe document; check "
                 "that it is the right file.");
}

TEST_CASE("a list takes 500 entries and not 501", "[badinput]") {
    std::vector<DocumentEdit> edits{{"/residues", ""}};
    const auto line = [](int i) {
        return R"({"amount":"1/4","unit":"tsp","food":"salt","id":"salt-)" + std::to_string(i) +
               "\"}";
    };
    for (int i = 0; i < 493; ++i) edits.push_back({"/lines/-", line(i)});
    {
        const ScratchKitchen kitchen;
        kitchen.write("doc.json", edited(skewers(), edits));
        CHECK(run({"figures", "doc.json"}).code == 0);
    }
    edits.push_back({"/lines/-", line(493)});
    checkRefused(edited(skewers(), edits),
                 "doc.json, /lines: there are more than 500 entries; remove some.");
}

TEST_CASE("markup and right-to-left letters in a title are shown as they are", "[badinput]") {
    const ScratchKitchen kitchen;
    for (const std::string& title :
         std::vector<std::string>{"<b onload=x>Pie &amp; peas</b>", "עוגת דבש"}) {
        kitchen.write("doc.json", replaced(skewers(), "Charred prawn & fennel skewers", title));
        const Outcome outcome = run({"figures", "doc.json"});
        CHECK(outcome.code == 0);
        CHECK(outcome.out.starts_with(title + "\n"));
    }
}
