#include <filesystem>
#include <set>

#include "import/imported.h"
#include "scratch.h"

namespace nettare {

namespace {

/// A small download. Columns stand in an order of their own, with others between them.
class Download {
public:
    Download() {
        std::filesystem::create_directory(scratch_.path("fdc"));
        write("food.csv",
              "\"description\",\"fdc_id\",\"data_type\",\"scientific_name\",\"food_category_id\","
              "\"publication_date\"\n"
              "\"Leeks, raw\",\"101\",\"sr_legacy_food\",\"\",\"11\",\"2019-04-01\"\n"
              "\"Leeks, foundation\",\"102\",\"foundation_food\",\"\",\"11\",\"2021-10-28\"\n"
              "\"Leek sample\",\"103\",\"sub_sample_food\",\"\",\"11\",\"2020-01-01\"\n"
              "\"LEEK SOUP\",\"104\",\"branded_food\",\"\",\"\",\"2020-02-02\"\n"
              "\"OAT DRINK\",\"105\",\"branded_food\",\"\",\"\",\"2020-02-02\"\n"
              "\"Leek, cooked\",\"106\",\"survey_fndds_food\",\"\",\"6409\",\"2020-10-30\"\n");
        write("food_category.csv",
              "id,code,description\n11,1100,Vegetables and Vegetable Products\n");
        write("wweia_food_category.csv",
              "wweia_food_category,wweia_food_category_description\n6409,Other vegetables\n");
        write("branded_food.csv",
              "fdc_id,brand_owner,brand_name,serving_size,serving_size_unit,"
              "household_serving_fulltext,branded_food_category\n"
              "104,Hearth Foods,Greenleaf,245,g,1 cup,Soups\n"
              "105,Hearth Foods,,240,ml,1 cup,Plant drinks\n");
        write("nutrient.csv",
              "id,name,unit_name,nutrient_nbr,rank\n1003,Protein,G,203,600\n1008,Energy,KCAL,208,"
              "300\n2047,Energy (Atwater General Factors),KCAL,957,280\n1093,Sodium,UG,307,5800\n"
              "1110,Vitamin D in IU,IU,324,8650\n");
        write("food_nutrient_derivation.csv", "id,code,description\n1,A,Analytical\n");
        write("measure_unit.csv", "id,name\n1001,tablespoon\n9999,undetermined\n");
        write("food_nutrient.csv",
              "id,fdc_id,nutrient_id,amount,data_points,derivation_id\n"
              "1,101,1003,1.5,4,1\n2,101,1008,61,,\n3,101,1093,20000,,\n4,101,1110,8,,\n"
              "5,102,1003,1.6,,\n6,102,2047,55,,\n7,103,1003,1.7,,\n8,104,1008,40,,\n"
              "9,105,1008,45,,\n10,106,1008,31,,\n11,101,9999,3,,\n");
        write("food_portion.csv",
              "id,fdc_id,seq_num,amount,measure_unit_id,portion_description,modifier,gram_weight,"
              "data_points\n"
              "1,101,1,1.0,9999,,\"cup, chopped\",89,3\n2,102,1,2,1001,,sliced,11,\n"
              "3,106,1,,9999,\"1 cup, NFS\",10205,104,\n4,106,2,,9999,Quantity not specified,"
              "90000,104,\n5,103,1,1,9999,,cup,10,\n6,101,2,1,9999,,large,88,\n");
    }

    void write(std::string_view name, std::string_view content) const {
        scratch_.write("fdc/" + std::string{name}, content);
    }
    /// Puts a line behind a file.
    void append(std::string_view name, std::string_view line) const {
        write(name, scratch_.read("fdc/" + std::string{name}) + std::string{line});
    }
    void remove(std::string_view name) const {
        std::filesystem::remove(scratch_.path("fdc/" + std::string{name}));
    }
    [[nodiscard]] Result<ImportReport> import(bool dryRun = false,
                                              const TellImport& tell = {}) const {
        ImportRequest request;
        request.kind = ImportKind::Fdc;
        request.path = scratch_.path("fdc");
        request.folder = scratch_.path("tables");
        request.dryRun = dryRun;
        return importFdc(request, tell);
    }
    [[nodiscard]] ImportReport imported() const {
        auto report = import();
        REQUIRE(report);
        return std::move(*report);
    }

private:
    Scratch scratch_;
};

}  // namespace

TEST_CASE("a FoodData Central download becomes a table named by its newest publication date",
          "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    CHECK(report.table == "usda-fdc");
    CHECK(report.release == "2021-10-28");
    CHECK(report.foods == 4);
    CHECK(report.rejected == 0);
    const TableFood leek = importedFood(report, "101");
    CHECK(leek.name == "Leeks, raw");
    CHECK(leek.group == "Vegetables and Vegetable Products");
    CHECK(leek.profile[Component::PROCNT] == 1.5);
    CHECK(leek.profile[Component::ENERC_KCAL] == 61.0);
    CHECK(leek.profile[Component::NA] == 20.0);
    CHECK(importedFood(report, "106").group == "Other vegetables");
    const auto values = importedValues(report, "101");
    REQUIRE(values.size() == 4);
    for (const FoodValue& value : values)
        if (value.number == "203") {
            CHECK(value.n == 4);
            CHECK(value.derivation == "Analytical");
        }
}

TEST_CASE(
    "samples behind the published foods, and foods known for 100 ml, are left out and counted",
    "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    CHECK(report.leftOut == std::map<std::string, std::size_t>{{"sub_sample_food", 1},
                                                               {"branded_food per 100 ml", 1}});
    CHECK_FALSE(hasFood(report, "103"));
    CHECK_FALSE(hasFood(report, "105"));
}

TEST_CASE("a branded food is found by its maker, and its serving is a household measure",
          "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    const TableFood soup = importedFood(report, "104");
    CHECK(soup.otherNames == std::vector<std::string>{"Hearth Foods", "Greenleaf"});
    CHECK(soup.group == "Soups");
    REQUIRE(soup.measures.size() == 1);
    CHECK(soup.measures[0].unit == "serving");
    CHECK(soup.measures[0].qualifier == "1 cup");
    CHECK(soup.measures[0].grams == 245);
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    const auto hits = table->search("leek", 10);
    REQUIRE(hits);
    REQUIRE(hits->size() == 4);
    CHECK(hits->back().row.number == "104");
    CHECK(hits->back().place == ProcessingPlace::Branded);
}

TEST_CASE("an energy by general factors alone is kept as what it is, and no energy is made of it",
          "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    CHECK_FALSE(importedFood(report, "102").profile[Component::ENERC_KCAL]);
    CHECK(report.unnamedComponents == std::map<std::string, std::size_t>{{"324", 1}, {"957", 1}});
    const auto values = importedValues(report, "102");
    REQUIRE(values.size() == 2);
    CHECK(values.back().number == "957");
    CHECK(values.back().name == "Energy (Atwater General Factors)");
    CHECK(values.back().per100g == 55);
}

TEST_CASE("portions become household measures, whichever column says what they are", "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    const auto leek = importedFood(report, "101").measures;
    REQUIRE(leek.size() == 2);
    CHECK(leek[1].unit == "large leek");
    CHECK(leek[0].unit == "cup");
    CHECK(leek[0].qualifier == "chopped");
    CHECK(leek[0].grams == 89);
    CHECK(leek[0].n == 3);
    const auto spoons = importedFood(report, "102").measures;
    REQUIRE(spoons.size() == 1);
    CHECK(spoons[0].unit == "tbsp");
    CHECK(spoons[0].qualifier == "sliced");
    CHECK(spoons[0].amount == 2);
    CHECK(spoons[0].gramsEach() == 5.5);
    const auto cooked = importedFood(report, "106").measures;
    REQUIRE(cooked.size() == 1);
    CHECK(cooked[0].unit == "cup");
    CHECK(cooked[0].qualifier == "NFS");
}

TEST_CASE("an unknown nutrient number is reported, and rows that cannot be taken say why",
          "[import]") {
    const Download download;
    download.append("food_nutrient.csv",
                    "12,101,1003,9,,\n13,777,1003,1,,\n14,106,1003,-1,,\n15,106,1003,x,,\n"
                    "16,106,1003\n17,106,1003,,,\n");
    download.append("food_portion.csv", "7,101,3,1,9999,,slice,0,\n");
    const ImportReport report = download.imported();
    CHECK(report.unknownComponents == std::map<std::string, std::size_t>{{"9999", 1}});
    CHECK(report.rejected == 6);
    CHECK(rejections(report) ==
          std::vector<std::pair<ErrorCode, int>>{{ErrorCode::RowRepeated, 13},
                                                 {ErrorCode::RowWithoutFood, 14},
                                                 {ErrorCode::CellNegative, 15},
                                                 {ErrorCode::CellNotANumber, 16},
                                                 {ErrorCode::FieldsDiffer, 17},
                                                 {ErrorCode::MeasureWeighsNothing, 8}});
    CHECK(report.rejectedRows[0].reason.value("found") == "101 203");
    CHECK(importedFood(report, "101").profile[Component::PROCNT] == 1.5);
    CHECK_FALSE(importedFood(report, "106").profile[Component::PROCNT]);
}

TEST_CASE("a dry run of a download reports the same, and one that is stopped writes nothing",
          "[import]") {
    const Download download;
    std::set<std::string> files;
    const auto dry = download.import(true, [&](const ImportProgress& progress) {
        files.emplace(progress.file);
        CHECK(progress.bytesDone <= progress.bytesInAll);
        return true;
    });
    REQUIRE(dry);
    CHECK(dry->foods == 4);
    CHECK_FALSE(dry->written);
    CHECK_FALSE(std::filesystem::exists(dry->path));
    CHECK(files.contains("food_nutrient.csv"));
    const auto stopped = download.import(false, [&](const ImportProgress& progress) {
        return progress.file != "food_nutrient.csv";
    });
    REQUIRE_FALSE(stopped);
    CHECK(stopped.error().code == ErrorCode::ImportStopped);
    CHECK_FALSE(std::filesystem::exists(dry->path));
    CHECK(download.imported().values == dry->values);
}

TEST_CASE("values in any order of foods come to the same table", "[import]") {
    const Download download;
    const ImportReport report = download.imported();
    const auto before = importedValues(report, "101");
    download.write("food_nutrient.csv",
                   "id,fdc_id,nutrient_id,amount,data_points,derivation_id\n"
                   "4,101,1110,8,,\n5,102,1003,1.6,,\n10,106,1008,31,,\n1,101,1003,1.5,4,1\n"
                   "6,102,2047,55,,\n3,101,1093,20000,,\n8,104,1008,40,,\n2,101,1008,61,,\n");
    const ImportReport shuffled = download.imported();
    CHECK(shuffled.values == report.values);
    const auto after = importedValues(shuffled, "101");
    REQUIRE(after.size() == before.size());
    for (std::size_t i = 0; i < after.size(); ++i) {
        CHECK(after[i].number == before[i].number);
        CHECK(after[i].per100g == before[i].per100g);
    }
}

TEST_CASE(
    "a download without one of its main files or columns is refused, without the others taken",
    "[import]") {
    const Download small;
    for (const char* name :
         {"branded_food.csv", "food_portion.csv", "food_category.csv", "wweia_food_category.csv",
          "food_nutrient_derivation.csv", "measure_unit.csv"})
        small.remove(name);
    CHECK(small.imported().foods == 5);
    small.remove("nutrient.csv");
    const auto report = small.import();
    REQUIRE_FALSE(report);
    CHECK(report.error().code == ErrorCode::ImportFileMissing);

    const Download odd;
    odd.write("food_nutrient.csv", "id,fdc_id,amount\n");
    const auto column = odd.import();
    REQUIRE_FALSE(column);
    CHECK(column.error().code == ErrorCode::CsvColumnMissing);
    CHECK(column.error().value("column") == "nutrient_id");
    CHECK(column.error().file == "food_nutrient.csv");

    const Download undated;
    undated.write("food.csv", "fdc_id,data_type,description,publication_date\n1,x,y,soon\n");
    const auto date = undated.import();
    REQUIRE_FALSE(date);
    CHECK(date.error().code == ErrorCode::FdcNoDate);
}

}  // namespace nettare
