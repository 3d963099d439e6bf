#include <catch2/catch.hpp>
#include <filesystem>
#include <ostream>
#include <sstream>
#include <streambuf>

#include "app/command_line/run.h"
#include "app/files/share_folder.h"
#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "core/food/component.h"
#include "core/publish/figures_json.h"
#include "core/support/json.h"
#include "core/support/text.h"
#include "db/kitchen/kitchen.h"
#include "support/run_tool.h"

using nettare::Json;
using nettare::JsonMember;

namespace {

/// The demo kitchen as home.nettare: two revisions of the patties, three of the skewers.
class DemoHome {
public:
    DemoHome() {
        std::filesystem::copy_file(nettare::shareFolder() + "/demo.nettare", "home.nettare");
        std::filesystem::permissions("home.nettare", std::filesystem::perms::owner_all);
    }

    static void change(const std::string& sql) {
        nettare::printedByTool(
            "sqlite3", "sqlite3 home.nettare \"DROP TRIGGER revision_is_not_edited;" + sql + "\"");
    }

    static Outcome all(std::vector<std::string> more) {
        more.insert(more.begin(), {"--kitchen", "home.nettare", "figures", "--all"});
        return run(more);
    }

private:
    ScratchKitchen folder_;
};

std::vector<Json> objectsIn(const std::string& text) {
    std::vector<Json> objects;
    for (const std::string_view line : nettare::split(text, '\n'))
        if (!line.empty()) objects.push_back(*nettare::parseJson(line));
    return objects;
}

/// A stream that takes a few bytes, as a disk that gets full does.
class Filling : public std::streambuf {
    std::streamsize xsputn(const char*, std::streamsize size) override {
        room_ -= size;
        return room_ < 0 ? 0 : size;
    }
    int sync() override { return room_ < 0 ? -1 : 0; }
    std::streamsize room_ = 10'000;
};

}  // namespace

TEST_CASE("all revisions of a kitchen are computed, each as it is alone", "[allfigures]") {
    const DemoHome home;
    for (const std::string& per : std::vector<std::string>{"piece", "portion", "100g", "batch"}) {
        const Outcome outcome = DemoHome::all({"--json", "--per", per});
        CHECK(outcome.code == 0);
        CHECK(outcome.err.empty());
        const auto lines = objectsIn(outcome.out);
        REQUIRE(lines.size() == 5);
        const std::vector<std::pair<std::string, int>> order{{"barley-beetroot-patties", 1},
                                                             {"barley-beetroot-patties", 2},
                                                             {"charred-prawn-fennel-skewers", 1},
                                                             {"charred-prawn-fennel-skewers", 2},
                                                             {"charred-prawn-fennel-skewers", 3}};
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const auto& [recipe, revision] = order[i];
            CHECK(*lines[i].find("recipe") == Json{recipe});
            CHECK(*lines[i].find("revision") == Json{double(revision)});
            CHECK(*lines[i].find("basis") == Json{per});
            CHECK(lines[i].find("kept") == nullptr);
            const auto alone = nettare::parseJson(
                run({"--kitchen", "home.nettare", "figures", recipe, "--revision",
                     std::to_string(revision), "--per", per, "--json"})
                    .out);
            const Json::Array& figures = *lines[i].find("figures")->items();
            REQUIRE(figures.size() == nettare::kComponentCount);
            for (std::size_t k = 0; k < figures.size(); ++k)
                for (const JsonMember& member : *figures[k].members())
                    CHECK(member.value == *(*alone->find("figures")->items())[k].find(member.key));
        }
    }
}

TEST_CASE("the number of threads changes no byte", "[allfigures]") {
    const DemoHome home;
    for (const std::string& form : std::vector<std::string>{"--json", "--per=piece"}) {
        const std::string one = DemoHome::all({form, "--jobs", "1"}).out;
        CHECK_FALSE(one.empty());
        for (const char* jobs : {"2", "3", "17"})
            CHECK(DemoHome::all({form, "--jobs", jobs}).out == one);
        CHECK(DemoHome::all({form}).out == one);
    }
}

TEST_CASE("without --json all revisions are rows of a table", "[allfigures]") {
    const DemoHome home;
    DemoHome::change("UPDATE revision SET arithmetic = 1 WHERE number = 2 AND recipe LIKE 'c%'");
    CHECK(DemoHome::all({}).out ==
          "recipe                            revision  energy per portion                kept "
          "figures\n"
          "barley-beetroot-patties                  1  246 kcal ± 24                     the same\n"
          "barley-beetroot-patties                  2  263 kcal ± 26                     the same\n"
          "charred-prawn-fennel-skewers             1  165 kcal ± 20                     the same\n"
          "charred-prawn-fennel-skewers             2  153 kcal ± 19                     differ "
          "today\n"
          "charred-prawn-fennel-skewers             3  144 kcal ± 19                     the "
          "same\n");
}

TEST_CASE("stored figures that come out otherwise stand beside today's, those alone",
          "[allfigures]") {
    const DemoHome home;
    DemoHome::change(
        "UPDATE revision SET figures = json_set(figures, '$.bases[1].figures[0].value', 150.5) "
        "WHERE number = 3");
    const auto lines = objectsIn(DemoHome::all({"--json"}).out);
    REQUIRE(lines.size() == 5);
    for (std::size_t i = 0; i < 4; ++i) CHECK(lines[i].find("kept") == nullptr);
    const Json* kept = lines[4].find("kept");
    REQUIRE(kept != nullptr);
    CHECK(*kept->find("arithmetic") == Json{double{nettare::kArithmeticVersion}});
    const Json::Array& figures = *kept->find("figures")->items();
    REQUIRE(figures.size() == 1);
    CHECK(*figures[0].find("value") == Json{150.5});
    // Of another basis only that it differs is said.
    const auto pieces = objectsIn(DemoHome::all({"--json", "--per", "piece"}).out);
    CHECK(pieces[4].find("kept")->find("figures")->items()->empty());
}

TEST_CASE("stored figures written in another way are the same figures", "[allfigures]") {
    const DemoHome home;
    DemoHome::change("UPDATE revision SET figures = replace(figures, ',', ', ')");
    for (const Json& line : objectsIn(DemoHome::all({"--json"}).out))
        CHECK(line.find("kept") == nullptr);
}

TEST_CASE("a revision that cannot be computed is told, and the others are printed",
          "[allfigures]") {
    const DemoHome home;
    DemoHome::change(
        "UPDATE revision SET document = json_set(document, '$.lines[0].food', 'gone') "
        "WHERE number = 2 AND recipe LIKE 'b%'");
    const Outcome outcome = DemoHome::all({"--json"});
    CHECK(outcome.code == 1);
    CHECK(outcome.err ==
          "nettare: barley-beetroot-patties#2, /lines/0/food: nothing fitting in this document is "
          "called “gone”; correct the name or add what it names.\n");
    CHECK(objectsIn(outcome.out).size() == 4);
}

TEST_CASE("a kitchen without revisions has no figures to show, and that is no error",
          "[allfigures]") {
    const ScratchKitchen folder;
    REQUIRE(nettare::Kitchen::create("home.nettare", "2026-05-16T12:00:00+02:00"));
    const Outcome outcome = DemoHome::all({"--json"});
    CHECK(outcome.code == 0);
    CHECK(outcome.out.empty());
    CHECK(outcome.err.empty());
}

TEST_CASE("a disk that gets full between two revisions ends the run", "[allfigures]") {
    const DemoHome home;
    for (const char* jobs : {"1", "4"}) {
        Filling disk;
        std::ostream out{&disk};
        std::ostringstream err;
        CHECK(nettare::runCommandLine(
                  {"--kitchen", "home.nettare", "figures", "--all", "--json", "--jobs", jobs}, out,
                  err) == 1);
        CHECK(err.str() ==
              "nettare: standard output: this file cannot be written, the disk may be full or its "
              "reader gone; nothing was changed there.\n");
    }
}

TEST_CASE("all figures of a kitchen that is not there are refused", "[allfigures]") {
    const ScratchKitchen folder;
    checkRun({"--kitchen", "home.nettare", "figures", "--all"},
             "home.nettare: there is no kitchen here; check the path, or begin a new one.");
}
