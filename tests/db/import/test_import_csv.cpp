#include "import/imported.h"
#include "scratch.h"

namespace nettare {

namespace {

CsvMapping villageMapping() {
    CsvMapping mapping;
    mapping.table = "village";
    mapping.release = "2024";
    mapping.citation = "Village kitchen table, 2024";
    mapping.numberColumn = "code";
    mapping.nameColumn = "name";
    mapping.components = {{"protein", Component::PROCNT, "g"}, {"iron", Component::FE, "g"}};
    return mapping;
}

/// A file that is imported by a mapping, to a folder beside it.
class Village {
public:
    explicit Village(const std::string& text) { scratch_.write("village.csv", text); }

    [[nodiscard]] Result<ImportReport> import(const CsvMapping& mapping, bool dryRun = false,
                                              const TellImport& tell = {}) const {
        ImportRequest request;
        request.kind = ImportKind::Csv;
        request.path = scratch_.path("village.csv");
        request.folder = scratch_.path("tables");
        request.dryRun = dryRun;
        request.mapping = mapping;
        return importCsv(request, tell);
    }
    [[nodiscard]] ImportReport imported(const CsvMapping& mapping) const {
        auto report = import(mapping);
        REQUIRE(report);
        return std::move(*report);
    }
    [[nodiscard]] Error refused(const CsvMapping& mapping) const {
        const auto report = import(mapping);
        REQUIRE_FALSE(report);
        CHECK_FALSE(scratch_.has("tables/village_2024.table"));
        return report.error();
    }
    [[nodiscard]] const Scratch& scratch() const { return scratch_; }

private:
    Scratch scratch_;
};

}  // namespace

TEST_CASE("a CSV becomes a table file by its mapping, with each unit converted", "[import]") {
    CsvMapping mapping = villageMapping();
    mapping.groupColumn = "group";
    mapping.otherNamesColumn = "also";
    mapping.refuseColumn = "refuse";
    const Village village{
        "iron,name,code,protein,group,also,refuse\n"
        "0.0021,\"leek,\nraw\",007,1.5,Vegetables,\"poireau; Porree, poireau\",56\n"
        "3.6e-3,barley,008,12.5,Cereals,,\n"};
    const ImportReport report = village.imported(mapping);
    CHECK(report.written);
    CHECK(report.foods == 2);
    CHECK(report.values == 4);
    CHECK(report.rejected == 0);
    const TableFood leek = importedFood(report, "007");
    CHECK(leek.name == "leek, raw");
    CHECK(leek.row.text() == "village 2024 007");
    CHECK(leek.group == "Vegetables");
    CHECK(leek.otherNames == std::vector<std::string>{"poireau", "Porree"});
    CHECK(leek.refusePercent == 56.0);
    CHECK(leek.profile[Component::PROCNT] == 1.5);
    CHECK(leek.profile[Component::FE] == 2.1);
    CHECK(importedFood(report, "008").profile[Component::FE] == 3.6);
}

TEST_CASE("values for another weight than 100 g, and decimal commas, are converted", "[import]") {
    CsvMapping mapping = villageMapping();
    mapping.separator = ';';
    mapping.decimalSign = ',';
    mapping.gramsOfFood = 50;
    const Village village{"code;name;protein;iron\n1;leek;1,5;0,001\n"};
    const TableFood leek = importedFood(village.imported(mapping), "1");
    CHECK(leek.profile[Component::PROCNT] == 3.0);
    CHECK(leek.profile[Component::FE] == 2.0);
}

TEST_CASE("what a table marks as no data is missing, never zero, and a zero where it says so",
          "[import]") {
    CsvMapping mapping = villageMapping();
    const Village village{"code,name,protein,iron\n1,leek,n/a,-\n2,barley,0,ND\n3,oil,,0.000\n"};
    const ImportReport zeros = village.imported(mapping);
    CHECK(zeros.rejected == 0);
    CHECK(zeros.values == 2);
    CHECK_FALSE(importedFood(zeros, "1").profile[Component::PROCNT]);
    CHECK_FALSE(importedFood(zeros, "1").profile[Component::FE]);
    CHECK(importedFood(zeros, "2").profile[Component::PROCNT] == 0.0);
    mapping.zeroIsMissing = true;
    const ImportReport none = village.imported(mapping);
    CHECK(none.values == 0);
    CHECK_FALSE(importedFood(none, "2").profile[Component::PROCNT]);
}

TEST_CASE("traces, limits and other words are no numbers: the value is left out, the food stays",
          "[import]") {
    const Village village{
        "code,name,protein,iron\n1,leek,tr,0.001\n2,rye,<0.1,0.002\n3,oat,\"1,5\",0.001\n"
        "4,fig,-2,0.001\n5,salt,500,0.001\n"};
    const ImportReport report = village.imported(villageMapping());
    CHECK(report.foods == 5);
    CHECK(report.values == 5);
    CHECK(rejections(report) ==
          std::vector<std::pair<ErrorCode, int>>{{ErrorCode::CellNotANumber, 2},
                                                 {ErrorCode::CellNotANumber, 3},
                                                 {ErrorCode::CellNotANumber, 4},
                                                 {ErrorCode::CellNegative, 5},
                                                 {ErrorCode::CellTooLarge, 6}});
    const Error& trace = report.rejectedRows.front().reason;
    CHECK(trace.file == "village.csv");
    CHECK(trace.value("found") == "tr");
    CHECK(trace.value("column") == "protein");
    CHECK(report.rejectedRows.back().reason.value("most") == "101");
}

TEST_CASE("a row without a number or a name, or with the number of another, is left out",
          "[import]") {
    const Village village{
        "code,name,protein,iron\n,leek,1,1\n2,,1,1\n3,rye,1,0.001\n3,oat,2,0.001\n"
        "4,short,1\n5,long,1,1,1\n6,\"x\"y,1,1\n7,Cr\xE8me,1,1\n8,\x1b[2J,1,1\n9,fig,1,0.001\n"};
    const ImportReport report = village.imported(villageMapping());
    CHECK(report.foods == 2);
    CHECK(report.rejected == 8);
    CHECK(rejections(report) ==
          std::vector<std::pair<ErrorCode, int>>{{ErrorCode::FoodNumberMissing, 2},
                                                 {ErrorCode::FoodNameMissing, 3},
                                                 {ErrorCode::FoodNumberTwice, 5},
                                                 {ErrorCode::FieldsDiffer, 6},
                                                 {ErrorCode::FieldsDiffer, 7},
                                                 {ErrorCode::CsvTextAfterQuote, 8},
                                                 {ErrorCode::CsvNotUtf8, 9},
                                                 {ErrorCode::FoodTextNotClean, 10}});
    CHECK(importedFood(report, "3").profile[Component::PROCNT] == 1.0);
}

TEST_CASE("a mapping that does not fit its file is refused before anything is written",
          "[import]") {
    const Village village{"code,name,protein,iron,iron 2,fat,fat\n1,leek,1,1,1,1,1\n"};
    CsvMapping absent = villageMapping();
    absent.components[0].column = "proteins";
    const Error missing = village.refused(absent);
    CHECK(missing.code == ErrorCode::CsvColumnMissing);
    CHECK(missing.value("column") == "proteins");
    CHECK(missing.value("known") == "code, name, protein, iron, iron 2, fat, fat");

    CsvMapping twice = villageMapping();
    twice.components[0] = {"fat", Component::FAT, "g"};
    CHECK(village.refused(twice).code == ErrorCode::CsvColumnTwice);

    CsvMapping energy = villageMapping();
    energy.components[0] = {"protein", Component::ENERC_KCAL, "kJ"};
    const Error unit = village.refused(energy);
    CHECK(unit.code == ErrorCode::CsvUnitNotFitting);
    CHECK(unit.value("found") == "kJ");
    CHECK(unit.value("wanted") == "kcal");

    CsvMapping open = villageMapping();
    open.components[1].unit.clear();
    CHECK(village.refused(open).code == ErrorCode::CsvUnitMissing);

    CsvMapping nameless = villageMapping();
    nameless.release.clear();
    CHECK(village.refused(nameless).pointer == "/release");
    CHECK(Village{""}.refused(villageMapping()).code == ErrorCode::CsvNoHeader);
}

TEST_CASE("a CSV without a mapping, and a folder of several, are refused", "[import]") {
    const Village village{"code,name,protein,iron\n"};
    ImportRequest request;
    request.kind = ImportKind::Csv;
    request.path = village.scratch().path("village.csv");
    request.folder = village.scratch().path("tables");
    const auto bare = importCsv(request, {});
    REQUIRE_FALSE(bare);
    CHECK(bare.error().code == ErrorCode::CsvMappingNeeded);
    village.scratch().write("other.csv", "a\n");
    request.mapping = villageMapping();
    request.path = village.scratch().path("");
    const auto several = importCsv(request, {});
    REQUIRE_FALSE(several);
    CHECK(several.error().code == ErrorCode::CsvOneFile);
}

TEST_CASE("a column of what the program does not compute with is kept for the cook to read",
          "[import]") {
    CsvMapping mapping = villageMapping();
    mapping.others = {{"soluble", "FIBSOL", "g"}};
    const Village village{"code,name,protein,iron,soluble\n1,leek,1.5,0.002,0.7\n"};
    const ImportReport report = village.imported(mapping);
    CHECK(report.unnamedComponents.at("FIBSOL") == 1);
    const auto values = importedValues(report, "1");
    REQUIRE(values.size() == 3);
    CHECK(values.back().tagname == "FIBSOL");
    CHECK(values.back().per100g == 0.7);
    CHECK(values.back().unit == "g");
}

TEST_CASE("the same CSV and mapping give the same bytes, and a dry run writes nothing",
          "[import]") {
    const Village village{"code,name,protein,iron\n1,leek,1.5,0.002\n"};
    const auto dry = village.import(villageMapping(), true);
    REQUIRE(dry);
    CHECK(dry->foods == 1);
    CHECK_FALSE(dry->written);
    CHECK_FALSE(village.scratch().has("tables/village_2024.table"));
    const ImportReport first = village.imported(villageMapping());
    const std::string bytes = bytesOf(first.path);
    const ImportReport second = village.imported(villageMapping());
    CHECK(second.unchanged);
    CHECK(bytesOf(second.path) == bytes);
}

TEST_CASE("an import of a CSV can be stopped, and the table of before stays", "[import]") {
    const Village village{"code,name,protein,iron\n1,leek,1.5,0.002\n"};
    const ImportReport first = village.imported(villageMapping());
    const std::string bytes = bytesOf(first.path);
    village.scratch().write("village.csv", "code,name,protein,iron\n2,rye,9,0.002\n");
    const auto stopped =
        village.import(villageMapping(), false, [](const ImportProgress&) { return false; });
    REQUIRE_FALSE(stopped);
    CHECK(stopped.error().code == ErrorCode::ImportStopped);
    CHECK(bytesOf(first.path) == bytes);
}

}  // namespace nettare
