#include <catch2/catch.hpp>
#include <filesystem>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "core/support/json.h"
#include "db/kitchen/kitchen.h"
#include "support/run_tool.h"
#include "support/scratch_folder.h"

using namespace nettare;

namespace {

std::string done(const std::vector<std::string>& arguments) {
    const Outcome outcome = run(arguments);
    CHECK(outcome.err.empty());
    CHECK(outcome.code == 0);
    return outcome.out;
}

std::string inHome(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"--kitchen", "home.nettare"});
    return done(arguments);
}

/// The skewers with a portion of the patties beside the fennel.
std::string platter() {
    return edited(
        skewers(),
        {{"/title", R"("Platter")"},
         {"/foods/-", R"({"id":"patties","name":"patties","recipe":"patties.json"})"},
         {"/lines/-", R"({"id":"patties","amount":"3","piece":"patty","food":"patties"})"}});
}

void writeExamples(const ScratchKitchen& folder) {
    folder.write("skewers.json", skewers());
    folder.write("patties.json", patties());
}

}  // namespace

TEST_CASE("documents become recipes of a new kitchen with their first revision",
          "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    CHECK(
        inHome({"add", "skewers.json", "patties.json"}) ==
        "Added “Charred prawn & fennel skewers” as charred-prawn-fennel-skewers, revision 1, with "
        "15 indications\n"
        "Added “Barley & beetroot patties” as barley-beetroot-patties, revision 1, with 12 "
        "indications\n");
    CHECK(inHome({"list"}) ==
          "barley-beetroot-patties           revision 1            263 kcal ± 26 per portion  "
          "Barley & beetroot patties\n"
          "charred-prawn-fennel-skewers      revision 1            144 kcal ± 19 per portion  "
          "Charred prawn & fennel skewers\n");
    const std::string revisions = inHome({"revisions", "barley"});
    CHECK(revisions.starts_with("   1  20"));
    CHECK(revisions.ends_with("  added from patties.json\n"));
    const std::string verified = inHome({"verify"});
    CHECK(
        verified.starts_with("2 recipes, 2 revisions, 14 food versions, 30 ledger entries\n"
                             "Head of the ledger: "));
    CHECK(verified.ends_with("\nNo fault found.\n"));
}

TEST_CASE("a kitchen's recipe has the very figures, words and panel of its document",
          "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    inHome({"add", "skewers.json", "patties.json"});
    for (const auto& [document, recipe] :
         {std::pair{"skewers.json", "charred"}, std::pair{"patties.json", "Barley & beet"}})
        for (const std::vector<std::string>& revision :
             std::vector<std::vector<std::string>>{{}, {"--revision", "1"}}) {
            const auto both = [&, named = recipe](std::vector<std::string> command) {
                const std::string expected = done(command);
                command[1] = named;
                command.insert(command.end(), revision.begin(), revision.end());
                CHECK(inHome(command) == expected);
            };
            for (const char* basis : {"piece", "portion", "100g", "batch"}) {
                both({"figures", document, "--per", basis, "--json"});
                both({"figures", document, "--per", basis});
            }
            both({"statement", document, "--pieces", "1,2,5"});
            done({"panel", document, "--out", "document.pdf"});
            std::vector<std::string> panel{"panel", recipe, "--out", "kitchen.pdf"};
            panel.insert(panel.end(), revision.begin(), revision.end());
            CHECK(inHome(panel) == "Panel written to kitchen.pdf\n");
            CHECK(bytesOf("kitchen.pdf") == bytesOf("document.pdf"));
        }
}

TEST_CASE("recipes that a document uses are added before it and stay its ingredients",
          "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    folder.write("platter.json", platter());
    CHECK(inHome({"add", "platter.json", "patties.json"}) ==
          "Added “Barley & beetroot patties” as barley-beetroot-patties, revision 1, with 12 "
          "indications\n"
          "Added “Platter” as platter, revision 1, with 15 indications\n");
    for (const std::string& per : std::vector<std::string>{"piece", "100g"})
        CHECK(inHome({"figures", "platter", "--json", "--per", per}) ==
              done({"figures", "platter.json", "--json", "--per", per}));
    const auto kitchen = Kitchen::open("home.nettare", KitchenAccess::Read);
    const auto kept = kitchen->revision("platter", 1);
    CHECK(*kept->document.find("foods")->items()->back().find("recipe") ==
          Json{"barley-beetroot-patties#1"});
    CHECK(kept->foods.size() == 14);
    CHECK(kept->ledgerHead == kitchen->verify()->ledgerHead);
    inHome({"verify"});
}

TEST_CASE("a recipe that the kitchen keeps already is used as it is", "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    folder.write("platter.json", platter());
    inHome({"add", "patties.json"});
    CHECK(inHome({"add", "./platter.json"}) ==
          "Added “Platter” as platter, revision 1, with 15 indications\n");
    checkRun({"--kitchen", "home.nettare", "add", "platter.json"},
             "platter.json: “Platter” is in this kitchen already, as platter, revision 1; leave it "
             "out or change it.");
}

TEST_CASE("what scales showed goes to the ledger as the document tells it", "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    inHome({"add", "skewers.json"});
    const auto ledger = Kitchen::open("home.nettare", KitchenAccess::Read)->ledger();
    REQUIRE(ledger);
    REQUIRE(ledger->size() == 18);
    CHECK(ledger->front().entry.kind == EntryKind::Scale);
    CHECK((*ledger)[2].entry.vessel == "steel bowl");
    const LedgerEntry& six = (*ledger)[8].entry;
    CHECK(six.indication == "prawn-6");
    CHECK(six.recipe == "charred-prawn-fennel-skewers");
    CHECK(six.origin == EntryOrigin::Document);
    CHECK(six.at == "2026-05-16T17:46:42+02:00");
    CHECK(six.shown.text() == "271.1");
    CHECK(six.readability.text() == "0.1");
    CHECK(six.scale == "pocket scale");
    CHECK(six.vessel == "steel bowl");
    CHECK(six.pieces == 6);
    CHECK(six.vesselTare->text() == "212.2");
    CHECK(six.what == "prawns, peeled");
    CHECK(six.row == "usda-sr 28 15270");
    CHECK(six.series == SeriesMark{SeriesKind::PerPiece, "prawn", {}, ""});
    const LedgerEntry& oil = (*ledger)[12].entry;
    CHECK(oil.indication == "oil");
    CHECK(oil.vessel.empty());
    CHECK(oil.tare == (*ledger)[11].entry.id);
    CHECK(oil.why == "weight of the line, for “Charred prawn & fennel skewers”");
    CHECK_FALSE(oil.series);
    CHECK(oil.id != six.id);
}

TEST_CASE("an indication without a time gets that of its entry", "[kitchencommands]") {
    const ScratchKitchen folder;
    folder.write("skewers.json", edited(skewers(), {{"/indications/0/at", ""}}));
    inHome({"add", "skewers.json"});
    const auto kitchen = Kitchen::open("home.nettare", KitchenAccess::Read);
    CHECK((*kitchen->ledger())[3].entry.at ==
          kitchen->revisions("charred-prawn-fennel-skewers")->front().at);
}

TEST_CASE("a backup is a whole kitchen", "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    inHome({"add", "skewers.json"});
    CHECK(inHome({"backup", "copy.nettare"}) == "Copy written to copy.nettare\n");
    CHECK(done({"--kitchen", "copy.nettare", "verify"}) == inHome({"verify"}));
    CHECK(done({"--kitchen", "copy.nettare", "figures", "charred", "--json"}) ==
          done({"figures", "skewers.json", "--json"}));
}

TEST_CASE("each fault of a kitchen is told in a sentence, and the exit code says so",
          "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    inHome({"add", "skewers.json", "patties.json"});
    printedByTool("sqlite3",
                  "sqlite3 home.nettare \"DROP TRIGGER revision_is_not_edited;"
                  "UPDATE revision SET document = replace(document, 'skewers', 'sticks');"
                  "DROP TRIGGER ledger_is_not_edited;"
                  "UPDATE ledger SET entry = replace(entry, '221.8', '220.8')\"");
    const Outcome outcome = run({"--kitchen", "home.nettare", "verify"});
    CHECK(outcome.code == 1);
    CHECK(outcome.err.empty());
    CHECK(outcome.out.starts_with("2 recipes, 2 revisions, 14 food versions, 3 ledger entries\n"));
    CHECK(outcome.out.find("home.nettare: ledger entry 4 is not what was recorded; compare it and "
                           "those after it with a backup.\n") != std::string::npos);
    CHECK(outcome.out.ends_with(
        "home.nettare: revision 1 of “charred-prawn-fennel-skewers” is not what was kept; compare "
        "it with a backup.\n2 faults found.\n"));
}

TEST_CASE("stored figures that were changed by another hand are found", "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    inHome({"add", "skewers.json", "patties.json"});
    printedByTool(
        "sqlite3",
        "sqlite3 home.nettare \"DROP TRIGGER revision_is_not_edited;"
        "UPDATE revision SET figures = replace(figures, '1', '2') WHERE recipe LIKE 'b%'\"");
    const Outcome outcome = run({"--kitchen", "home.nettare", "verify"});
    CHECK(outcome.code == 1);
    CHECK(outcome.out.ends_with(
        "home.nettare: revision 1 of “barley-beetroot-patties” is not what was kept; compare it "
        "with a backup.\n1 fault found.\n"));
}

TEST_CASE("the option --kitchen may stand behind its command as well", "[kitchencommands]") {
    const ScratchKitchen folder;
    writeExamples(folder);
    done({"add", "skewers.json", "--kitchen", "home.nettare"});
    CHECK(done({"list", "--kitchen=home.nettare"}) == inHome({"list"}));
}

TEST_CASE("a kitchen's recipe and its revision have the path of their document",
          "[kitchencommands]") {
    const ScratchKitchen scratch;
    scratch.write("doc.json", skewers());
    CHECK(run({"--kitchen", "k.nettare", "add", "doc.json"}).code == 0);
    const std::string path = run({"path", "doc.json", "ENERC_KCAL"}).out;
    CHECK(path.starts_with("Where 144 kcal comes from\n"));
    CHECK(run({"--kitchen", "k.nettare", "path", "charred", "ENERC_KCAL"}).out == path);
    CHECK(run({"--kitchen", "k.nettare", "path", "charred", "ENERC_KCAL", "--revision", "1"}).out ==
          path);
}

TEST_CASE("each command's help has an example", "[kitchencommands]") {
    for (const char* command :
         {"figures", "path", "statement", "panel", "add", "list", "revisions", "verify", "backup"})
        CHECK(done({command, "--help"})
                  .find(std::string{"nettare --kitchen spring.nettare "} + command) !=
              std::string::npos);
    CHECK(done({"--help"}).find("--kitchen") != std::string::npos);
}
