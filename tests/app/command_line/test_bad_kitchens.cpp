#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "db/kitchen/kitchen.h"
#include "small_disk.h"
#include "support/run_tool.h"
#include "without_rights.h"

using namespace nettare;

namespace {

/// A folder with both examples as documents and the kitchen home.nettare with the skewers in it.
class HomeKitchen {
public:
    HomeKitchen() {
        folder_.write("skewers.json", skewers());
        folder_.write("patties.json", patties());
        REQUIRE(run({"--kitchen", "home.nettare", "add", "skewers.json"}).code == 0);
    }
    void write(const std::string& name, std::string_view bytes) const {
        folder_.write(name, bytes);
    }

private:
    ScratchKitchen folder_;
};

std::vector<std::string> atHome(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"--kitchen", "home.nettare"});
    return arguments;
}

std::size_t recipesAtHome() {
    return Kitchen::open("home.nettare", KitchenAccess::Read)->recipes()->size();
}

}  // namespace

TEST_CASE("every command but “add” needs a kitchen that is there", "[badkitchen]") {
    const ScratchKitchen folder;
    const std::vector<std::vector<std::string>> commands{{"list"},
                                                         {"figures", "skewers"},
                                                         {"statement", "skewers"},
                                                         {"panel", "skewers", "--out", "a.pdf"},
                                                         {"revisions", "skewers"},
                                                         {"verify"},
                                                         {"backup", "copy.nettare"}};
    for (const auto& command : commands)
        checkRun(atHome(command),
                 "home.nettare: there is no kitchen here; check the path, or "
                 "begin a new one.");
    CHECK(std::filesystem::is_empty("."));
}

TEST_CASE("a file that is no kitchen of this program is refused and stays", "[badkitchen]") {
    const HomeKitchen home;
    const std::string foreign =
        "this is some other file, no kitchen; give the path of a file "
        "that ends in .nettare.";
    const std::string empty =
        "this file is empty, no kitchen; take a backup, or begin a new "
        "kitchen under another name.";
    home.write("empty", "");
    std::filesystem::create_directory("folder");
    for (const std::vector<std::string>& command :
         std::vector<std::vector<std::string>>{{"list"}, {"add", "patties.json"}}) {
        const auto at = [&](const std::string& kitchen) {
            std::vector<std::string> all{"--kitchen", kitchen};
            all.insert(all.end(), command.begin(), command.end());
            return all;
        };
        checkRun(at("skewers.json"), "skewers.json: " + foreign);
        checkRun(at("empty"), "empty: " + empty);
        checkRun(at("folder"),
                 "folder: this is a folder, no kitchen; give the path of a file that "
                 "ends in .nettare.");
    }
    CHECK(std::filesystem::file_size("empty") == 0);
}

TEST_CASE("a kitchen of a later program is refused", "[badkitchen]") {
    const HomeKitchen home;
    printedByTool("sqlite3", "sqlite3 home.nettare \"PRAGMA user_version = 99\"");
    for (const std::vector<std::string>& command :
         std::vector<std::vector<std::string>>{{"list"}, {"add", "patties.json"}, {"verify"}})
        checkRun(atHome(command),
                 "home.nettare: this kitchen has format 99, this program knows formats up to 6; "
                 "update the program.");
}

TEST_CASE("a recipe is named by its id or a title that only it begins with", "[badkitchen]") {
    const HomeKitchen home;
    home.write("other.json", edited(skewers(), {{"/title", R"("Charred leeks")"}}));
    REQUIRE(run(atHome({"add", "other.json"})).code == 0);
    checkRun(atHome({"figures", "soup"}),
             "home.nettare: no recipe here is called “soup”; write its id or how its title "
             "begins.");
    checkRun(atHome({"figures", "charred"}),
             "home.nettare: “charred” can be any of “Charred leeks” (charred-leeks), “Charred "
             "prawn & fennel skewers” (charred-prawn-fennel-skewers); write more of the title, or "
             "the id.");
    checkRun(atHome({"revisions", "skewers"}),
             "home.nettare: no recipe here is called “skewers”; write its id or how its title "
             "begins.");
}

TEST_CASE("a revision that was never kept is refused with how many there are", "[badkitchen]") {
    const HomeKitchen home;
    for (const char* command : {"figures", "statement"})
        checkRun(atHome({command, "charred", "--revision", "7"}),
                 "home.nettare: the recipe “charred-prawn-fennel-skewers” has no revision 7; it "
                 "has 1 of them.");
}

TEST_CASE("documents are added all together or not at all", "[badkitchen]") {
    const HomeKitchen home;
    home.write("wrong.json", edited(patties(), {{"/lines/2/unit", R"("cupp")"}}));
    const std::string wrong =
        "wrong.json, /lines/2/unit: the unit “cupp” is not known; use one of: g, kg, mg, oz, lb, "
        "ml, mL, cl, dl, l, L, tsp, tbsp, dessertspoon, cup, fl oz, pint, quart, gal, stick, "
        "pinch, dash, drop, us fl oz, us pint, us quart, us gal, imp fl oz, imp pint, imp quart, "
        "imp gal.";
    checkRun(atHome({"add", "patties.json", "wrong.json"}), wrong);
    checkRun({"--kitchen", "new.nettare", "add", "patties.json", "wrong.json"}, wrong);
    CHECK_FALSE(std::filesystem::exists("new.nettare"));
    checkRun(atHome({"add", "patties.json", "gone.json"}),
             "gone.json: this file cannot be read, there is no such file; check the path and try "
             "again.");
    checkRun(atHome({"add", "patties.json", "skewers.json"}),
             "skewers.json: “Charred prawn & fennel skewers” is in this kitchen already, as "
             "charred-prawn-fennel-skewers, revision 1; leave it out or change it.");
    CHECK(recipesAtHome() == 1);
    CHECK(run(atHome({"verify"})).code == 0);
}

TEST_CASE("a kitchen that another window works in is only read", "[badkitchen]") {
    const HomeKitchen home;
    const auto window = Kitchen::open("home.nettare", KitchenAccess::Write);
    REQUIRE(window);
    const Outcome refused = run(atHome({"add", "patties.json"}));
    CHECK(refused.code == 1);
    CHECK(refused.err.starts_with("nettare: home.nettare: this kitchen is in work elsewhere, "));
    CHECK(refused.err.ends_with(", process " + std::to_string(getpid()) +
                                "; close it there and open it again.\n"));
    CHECK(run(atHome({"list"})).code == 0);
    CHECK(run(atHome({"figures", "charred"})).code == 0);
    CHECK(run(atHome({"verify"})).code == 0);
    CHECK(run(atHome({"backup", "copy.nettare"})).code == 0);
}

TEST_CASE("a disk that takes no more keeps the kitchen as it was", "[badkitchen]") {
    const HomeKitchen home;
    Outcome refused;
    {
        const SmallDisk disk{rlim_t{64} * 1024};
        refused = run(atHome({"add", "patties.json"}));
    }
    CHECK(refused.code == 1);
    CHECK(refused.out.empty());
    CHECK(refused.err.starts_with("nettare: home.nettare: the disk "));
    CHECK(refused.err.find("nothing of this change was kept") != std::string::npos);
    CHECK(recipesAtHome() == 1);
    CHECK(run(atHome({"verify"})).code == 0);
}

TEST_CASE("a copy that a disk does not take names the copy and leaves none", "[badkitchen]") {
    const HomeKitchen home;
    const std::string refused =
        "the disk does not answer as it should, disk I/O error, and nothing of this change was "
        "kept; check the disk and try again.";
    {
        const SmallDisk disk{rlim_t{64} * 1024};
        checkRun(atHome({"backup", "copy.nettare"}), "copy.nettare: " + refused);
        checkRun({"--kitchen", "new.nettare", "add", "patties.json"}, "new.nettare: " + refused);
    }
    CHECK_FALSE(std::filesystem::exists("copy.nettare"));
    CHECK_FALSE(std::filesystem::exists("new.nettare"));
}

TEST_CASE("where nothing may be written no kitchen is begun", "[badkitchen]") {
    const HomeKitchen home;
    checkRun({"--kitchen", "no folder/new.nettare", "add", "patties.json"},
             "no folder/new.nettare: no kitchen can be written here, the file or its folder does "
             "not allow it; choose a folder of your own.");
    const std::string here = std::filesystem::current_path().string();
    const std::string refused =
        "no kitchen can be written here, the file or its folder does not allow it; choose a folder "
        "of your own.";
    const WithoutRights reader{here};
    checkRun(atHome({"add", "patties.json"}), "home.nettare: " + refused);
    checkRun({"--kitchen", "new.nettare", "add", "patties.json"}, "new.nettare: " + refused);
    checkRun(atHome({"backup", "copy.nettare"}), "copy.nettare: " + refused);
    CHECK(run(atHome({"list"})).code == 0);
    CHECK(run(atHome({"figures", "charred"})).code == 0);
    CHECK(run(atHome({"verify"})).code == 0);
}

TEST_CASE("a backup never takes the place of a file", "[badkitchen]") {
    const HomeKitchen home;
    for (const char* file : {"patties.json", "home.nettare"})
        checkRun(atHome({"backup", file}), std::string{file} +
                                               ": a file of this name is there and stays as it "
                                               "is; choose another name.");
    checkRun(atHome({"backup", "no folder/copy.nettare"}),
             "no folder/copy.nettare: no kitchen can be written here, the file or its folder does "
             "not allow it; choose a folder of your own.");
}
