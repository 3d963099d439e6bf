#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>

#include "app/command_line/import_report_text.h"
#include "app/words/error_sentence.h"
#include "command_line/scratch_kitchen.h"

using namespace nettare;

namespace {

/// Imported tables go to a folder of the scratch while it lives.
class ImportFolderHere {
public:
    ImportFolderHere() { ::setenv("NETTARE_TABLES", "tables", 1); }
    ~ImportFolderHere() { ::unsetenv("NETTARE_TABLES"); }
    ImportFolderHere(const ImportFolderHere&) = delete;
    ImportFolderHere& operator=(const ImportFolderHere&) = delete;
};

/// One invented food in the ASCII form of the Standard Reference.
void writeSmallSr28(const ScratchKitchen& here) {
    std::filesystem::create_directory("sr28");
    here.write("sr28/FD_GROUP.txt", "~1100~^~Vegetables and Vegetable Products~\r\n");
    here.write("sr28/SRC_CD.txt", "~1~^~Analytical~\r\n");
    here.write("sr28/DERIV_CD.txt", "~A~^~Analytical data~\r\n");
    here.write("sr28/NUTR_DEF.txt",
               "~203~^~g~^~PROCNT~^~Protein~^~2~^~600~\r\n"
               "~209~^~g~^~STARCH~^~Starch~^~2~^~2200~\r\n");
    here.write("sr28/FOOD_DES.txt",
               "~90001~^~1100~^~Moonroots, raw~^~~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57\r\n");
    here.write("sr28/NUT_DATA.txt",
               "~90001~^~203~^1.25^9^0.040^~1~^~A~^~~^~~^^^^^^^~~^05/2016^\r\n"
               "~90001~^~209~^5^0^^~1~^~A~^~~^~~^^^^^^^~~^05/2016^\r\n"
               "~90001~^~999~^5^0^^~1~^~A~^~~^~~^^^^^^^~~^05/2016^\r\n");
    here.write("sr28/WEIGHT.txt",
               "~90001~^1^1^~cup~^116^^\r\n~90002~^1^1^~cup~^116^^\r\n~90001~^2^1^~cup~\r\n");
}

constexpr auto kFindings =
    "Stored, but no component of this program: 1 values under 1 of the publisher's numbers\n"
    "Not stored, the publisher's list has no such number:\n"
    "  999          1 values\n"
    "2 rejected:\n"
    "  WEIGHT.txt, line 2: the list of foods has no “90002”; compare this row with it.\n"
    "  WEIGHT.txt, line 3: this row has 4 fields and should have 7; compare it with the "
    "publisher's file.\n"
    "Source: US Department of Agriculture, Agricultural Research Service, Nutrient Data "
    "Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version "
    "current: September 2015.\n";

}  // namespace

TEST_CASE("an import says what it took, what it did not, and where the table went",
          "[commandline][import]") {
    const ScratchKitchen here;
    const ImportFolderHere folder;
    writeSmallSr28(here);
    const Outcome dry = run({"import", "sr28", "sr28", "--dry-run"});
    CHECK(dry.code == 0);
    CHECK(dry.out == std::string{"usda-sr 28: 1 foods, 2 values, 1 measures\n"
                                 "Nothing was written, this was a dry run.\n"} +
                         kFindings);
    CHECK(dry.err.empty());
    CHECK_FALSE(std::filesystem::exists("tables"));
    const Outcome done = run({"import", "sr28", "sr28"});
    CHECK(done.code == 0);
    CHECK(done.out == std::string{"usda-sr 28: 1 foods, 2 values, 1 measures\n"
                                  "Written to tables/usda-sr_28.table.\n"} +
                          kFindings);
    const Outcome again = run({"import", "sr28", "sr28"});
    CHECK(
        again.out.starts_with("usda-sr 28: 1 foods, 2 values, 1 measures\n"
                              "tables/usda-sr_28.table holds the same already.\n"));
    const Outcome found = run({"foods", "moonroots"});
    CHECK(found.out.find("usda-sr 28 90001") != std::string::npos);
}

TEST_CASE("an import that cannot be done is refused with one sentence", "[commandline][import]") {
    const ScratchKitchen here;
    const ImportFolderHere folder;
    writeSmallSr28(here);
    const Outcome missing = run({"import", "sr28", "none.zip"});
    CHECK(missing.code == 1);
    CHECK(missing.err ==
          "nettare: none.zip: this file cannot be read, No such file or directory; check the path "
          "and try again.\n");
    here.write("letter.zip", "Dear moon");
    CHECK(run({"import", "fdc", "letter.zip"}).err ==
          "nettare: letter.zip: this zip cannot be read (Not a zip archive); fetch the download "
          "again.\n");
    here.write("sr28/WEIGHT.txt", "id,name\n");
    CHECK(run({"import", "sr28", "sr28"}).err ==
          "nettare: WEIGHT.txt, line 1: this is not how the publisher writes this file, “id,name” "
          "where 7 fields between carets is due; fetch the download again, or look whether it is "
          "another table.\n");
    std::filesystem::remove("sr28/WEIGHT.txt");
    CHECK(run({"import", "sr28", "sr28"}).err ==
          "nettare: sr28: there is no “WEIGHT.txt” in it; give the zip or folder as its publisher "
          "hands it out.\n");
    CHECK_FALSE(std::filesystem::exists("tables/usda-sr_28.table"));
}

TEST_CASE("a CSV without a mapping gets a guess of it", "[commandline][import]") {
    const ScratchKitchen here;
    const ImportFolderHere folder;
    here.write("moon.csv", "code,name,protein (g)\n1,grey dust,0.5\n2,white dust,0.25\n");
    const Outcome guess = run({"import", "csv", "moon.csv"});
    CHECK(guess.code == 0);
    CHECK(guess.out.find("\"format\": \"nettare columns\"") != std::string::npos);
    CHECK(guess.err ==
          "nettare: nothing was imported, this is a guess of the columns; complete it in a file "
          "and name that with --mapping.\n");
    CHECK_FALSE(std::filesystem::exists("tables"));
    here.write("not.json", "{");
    const Outcome bad = run({"import", "csv", "moon.csv", "--mapping", "not.json"});
    CHECK(bad.code == 1);
    CHECK(bad.err.starts_with("nettare: not.json, line 1"));
}

TEST_CASE("more rejected rows than are kept are counted", "[commandline][import]") {
    ImportReport report;
    report.rejected = 3;
    Error reason = Error{ErrorCode::RowRepeated}.with("found", "90001 203");
    reason.file = "NUT_DATA.txt";
    reason.line = 7;
    report.rejectedRows.push_back({reason});
    const std::string text = importReportText(report, true);
    CHECK(text.find("3 rejected:\n  NUT_DATA.txt, line 7: an earlier row tells the same of “90001 "
                    "203”, which counts; compare the two.\n  and 2 more\n") != std::string::npos);
}

TEST_CASE("the sentences of imports say what to do", "[words][import]") {
    CHECK(errorSentence(Error{ErrorCode::ImportStopped}) ==
          "the import was stopped; nothing was changed, start it again when you like.");
    Error busy{ErrorCode::ImportBusy};
    busy.file = "tables";
    CHECK(errorSentence(busy) ==
          "tables: another import writes tables into this folder; wait until it has ended, then "
          "try again.");
    CHECK(errorSentence(Error{ErrorCode::UnitUnconvertible}
                            .with("unit", "IU")
                            .with("component", "vitamin C")
                            .with("wanted", "mg")) ==
          "“IU” of vitamin C cannot be turned into mg; leave this component out, or give the unit "
          "that its values are in.");
}
