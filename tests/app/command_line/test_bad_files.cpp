#include <fmt/format.h>
#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <filesystem>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"

namespace {

/// The skewers with their fennel taken from another document.
std::string usingKept(const std::string& recipe) {
    return edited(skewers(),
                  {{"/foods/1", R"({"id":"fennel","name":"fennel","recipe":")" + recipe + "\"}"}});
}

void checkUnreadable(const std::string& path, const std::string& reason) {
    checkRun({"figures", path}, path + (path.empty() ? "" : ": ") + "this file cannot be read, " +
                                    reason + "; check the path and try again.");
}

}  // namespace

TEST_CASE("only plain files are read, and each refusal says why", "[badinput]") {
    const ScratchKitchen kitchen;
    std::filesystem::create_directory("folder");
    std::filesystem::create_symlink("loop.json", "loop.json");
    REQUIRE(mkfifo("pipe", 0600) == 0);
    checkUnreadable("no.json", "there is no such file");
    checkUnreadable("", "the path is empty");
    checkUnreadable("folder", "it is a folder");
    checkUnreadable("loop.json", "the link leads to itself");
    checkUnreadable("pipe", "it is a device or a pipe");
    checkUnreadable("/dev/zero", "it is a device or a pipe");
    checkUnreadable(std::string(300, 'x'), "the path is too long");
    checkRun({"figures", "a\nb\xff.json"},
             "a b\uFFFD.json: this file cannot be read, there is no such file; check the path and "
             "try again.");
}

TEST_CASE("a kept recipe that is missing or bad is named, with who uses it", "[badinput]") {
    const ScratchKitchen kitchen;
    kitchen.write("a.json", usingKept("gone.json"));
    checkRun({"figures", "a.json"},
             "gone.json (used by a.json, /foods/1/recipe): this file cannot be read, there is no "
             "such file; check the path and try again.");
    kitchen.write("a.json", usingKept("broken.json"));
    kitchen.write("broken.json", "{\n\"format\":");
    checkRun(
        {"figures", "a.json"},
        "broken.json, line 2 (used by a.json, /foods/1/recipe): the document ends too early, a "
        "quote or bracket is still open; complete it or take a whole copy.");
    kitchen.write("broken.json", edited(skewers(), {{"/lines/2/unit", R"("cupp")"}}));
    checkRun({"figures", "a.json"},
             "broken.json, /lines/2/unit (used by a.json, /foods/1/recipe): the unit “cupp” is not "
             "known; use one of: g, kg, mg, oz, lb, ml, mL, cl, dl, l, L, tsp, tbsp, "
             "dessertspoon, cup, fl oz, pint, quart, gal, stick, pinch, dash, drop, us fl oz, us "
             "pint, us quart, us gal, imp fl oz, imp pint, imp quart, imp gal.");
    kitchen.write("broken.json",
                  edited(skewers(), {{"/foods/2/label/declares/0/printed", R"("52")"}}));
    checkRun({"figures", "a.json"},
             "broken.json, /foods/2/label/declares/0/printed: the label of olive oil cannot "
             "lawfully print “52” for energy; compare it with the pack.");
}

TEST_CASE("a recipe that uses itself is refused with the way round", "[badinput]") {
    const ScratchKitchen kitchen;
    kitchen.write("a.json", usingKept("b.json"));
    kitchen.write("b.json", usingKept("./a.json"));
    kitchen.write("top.json", usingKept("a.json"));
    kitchen.write("self.json", usingKept("no/../self.json"));
    for (const std::string& from : std::vector<std::string>{"a.json", "top.json", "./a.json"})
        checkRun({"figures", from},
                 "b.json, /foods/1/recipe: a recipe cannot be an ingredient of itself: a.json uses "
                 "b.json, which uses a.json; take one of them out.");
    checkRun(
        {"figures", "./self.json"},
        "self.json, /foods/1/recipe: a recipe cannot be an ingredient of itself: self.json uses "
        "self.json; take one of them out.");
}

TEST_CASE("recipes in recipes end at eight levels and at 2000 lines", "[badinput]") {
    const ScratchKitchen kitchen;
    const auto name = [](int level) { return "n" + std::to_string(level) + ".json"; };
    for (int level = 0; level < 9; ++level) kitchen.write(name(level), usingKept(name(level + 1)));
    kitchen.write(name(9), skewers());
    checkRun({"figures", "n0.json"},
             "n7.json, /foods/1/recipe: recipes stand in recipes more than 8 deep; write one of "
             "them out.");
    std::vector<DocumentEdit> edits{{"/foods/-", ""}};
    for (int level = 0; level < 4; ++level) {
        edits.front().json = R"({"id":"kept","name":"kept","recipe":")" + name(level + 1) + "\"}";
        std::vector<DocumentEdit> all = edits;
        for (int i = 0; i < 12; ++i)
            all.push_back({"/lines/-", R"({"amount":"1","piece":"skewer","food":"kept","id":"x)" +
                                           std::to_string(i) + "\"}"});
        kitchen.write(name(level), edited(skewers(), all));
    }
    kitchen.write(name(4), skewers());
    checkRun({"figures", "n0.json"},
             "n1.json, /lines/8: with the recipes it uses, this recipe has more than 2000 lines; "
             "use fewer of them.");
}

TEST_CASE("a line that uses a kept recipe refuses keys that say nothing about it", "[badinput]") {
    const ScratchKitchen kitchen;
    kitchen.write("inner.json", skewers());
    const auto line = [](const std::string& key, const std::string& value) {
        return fmt::format(
            R"({{"id":"fennel","amount":"1","piece":"batch","food":"fennel","{}":"{}"}})", key,
            value);
    };
    for (const std::string& key : std::vector<std::string>{"way", "trim", "size"}) {
        const std::string value = key == "way" ? "assumed" : "prawn-meat";
        const DocumentEdit edit{"/lines/1", line(key, value)};
        kitchen.write("a.json", edited(usingKept("inner.json"), {edit}));
        checkRun({"figures", "a.json"},
                 fmt::format("a.json, /lines/1/{0}: “{0}” says nothing about fennel, which is a "
                             "recipe of its own; give its amount in pieces, batches or grams, or "
                             "weigh it, and remove the key.",
                             key));
    }
}

TEST_CASE("of many documents one bad one keeps all from being printed", "[badinput]") {
    const ScratchKitchen kitchen;
    kitchen.write("good.json", skewers());
    for (const std::string& how : std::vector<std::string>{"--per=batch", "--json"})
        checkRun({"figures", how, "good.json", "good.json", "no.json"},
                 "no.json: this file cannot be read, there is no such file; check the path and try "
                 "again.");
}

TEST_CASE("a table file that is missing or foreign is named", "[badinput]") {
    const ScratchKitchen kitchen;
    const ShareFolder share{"share"};
    kitchen.write("doc.json", skewers());
    for (const std::vector<std::string>& call :
         {std::vector<std::string>{"figures", "doc.json"}, {"foods", "prawn"}}) {
        std::filesystem::remove_all("share");
        std::filesystem::create_directory("share");
        checkRun(call,
                 "share/starter.table: this table file is missing or damaged; install the program "
                 "again or set NETTARE_SHARE to the folder that holds it.");
        kitchen.write("share/starter.table", "hello");
        checkRun(call,
                 "share/starter.table: this is some other file, no table of foods; install the "
                 "program again or set NETTARE_SHARE to the right folder.");
    }
}
