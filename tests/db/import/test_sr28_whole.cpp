#include <SQLiteCpp/Database.h>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <fstream>

#include "db/food_table.h"
#include "db/import/import_files.h"
#include "db/import/import_table.h"
#include "scratch.h"
#include "sr28.h"

using namespace nettare;

namespace {

/// Unpacks the zip into a folder of the scratch.
std::string unpacked(const Scratch& scratch) {
    const auto files = ImportFiles::open(NETTARE_SR28);
    REQUIRE(files);
    std::string folder = scratch.path("sr28");
    std::filesystem::create_directory(folder);
    for (const std::string& name : files->names()) {
        auto stream = files->read(name);
        REQUIRE(stream);
        std::ofstream out{std::filesystem::path{folder} / name, std::ios::binary};
        for (;;) {
            const auto bytes = (*stream)->next();
            REQUIRE(bytes);
            if (bytes->empty()) break;
            out << *bytes;
        }
    }
    return folder;
}

/// Energy by the food's own factors; alcohol as in USDA Handbook 74: 6.93 kcal/g.
double energyByFactors(const TableFood& food) {
    const auto grams = [&](Component component) { return food.profile[component].value_or(0); };
    return grams(Component::PROCNT) * *food.factors.protein +
           grams(Component::FAT) * *food.factors.fat +
           grams(Component::CHOCDF) * *food.factors.carbohydrate + grams(Component::ALC) * 6.93;
}

bool hasAllFactors(const TableFood& food) {
    return food.factors.protein && food.factors.fat && food.factors.carbohydrate;
}

}  // namespace

// Record counts of the release's documentation, table 3.
TEST_CASE("the whole release has as many records as its documentation says", "[import][sr28]") {
    if (!hasSr28()) return;
    SQLite::Database table{NETTARE_SR28_TABLE};
    const auto count = [&](const std::string& name) {
        return table.execAndGet("SELECT count(*) FROM " + name).getInt();
    };
    CHECK(count("food") == 8789);
    CHECK(count("food_component") == 679045);
    CHECK(count("measure") == 15438);
    CHECK(count("food_group") == 25);
    CHECK(count("source") == 10);
    CHECK(count("derivation") == 55);
    // 40 of its 150 nutrients are ours; ours are 41, as it knows no added sugars.
    CHECK(count("component") == 150 + 1);
    CHECK(count("input") == 7);
}

// 97.0 % of the 4,565 foods with all three factors; see the energy check beside the reference data.
TEST_CASE("energies follow from protein, fat, carbohydrate and the foods' own factors",
          "[import][sr28]") {
    if (!hasSr28()) return;
    const auto table = FoodTable::open(NETTARE_SR28_TABLE);
    REQUIRE(table);
    int foods = 0;
    int close = 0;
    const auto numbers = table->numbers();
    REQUIRE(numbers);
    for (const std::string& number : *numbers) {
        const auto food = table->find(number);
        REQUIRE(food);
        if (!hasAllFactors(**food)) continue;
        ++foods;
        const auto energy = (*food)->profile[Component::ENERC_KCAL];
        constexpr double kRoundingOfDoubles = 1e-9;
        if (energy && std::abs(energyByFactors(**food) - *energy) <= 1 + kRoundingOfDoubles)
            ++close;
    }
    CHECK(foods == 4565);
    CHECK(close == 4430);
}

TEST_CASE("the zip and its unpacked folder give the same bytes", "[import][sr28]") {
    if (!hasSr28()) return;
    const Scratch scratch;
    ImportRequest request;
    request.path = unpacked(scratch);
    request.folder = scratch.path("tables");
    const auto report = importTable(request);
    REQUIRE(report);
    CHECK(report->rejected == 0);
    CHECK(report->unknownComponents.empty());
    CHECK(bytesOf(report->path) == bytesOf(NETTARE_SR28_TABLE));
}

TEST_CASE("a zip that is cut off or damaged leaves no table", "[import][sr28]") {
    if (!hasSr28()) return;
    const Scratch scratch;
    const std::string whole = bytesOf(NETTARE_SR28);
    ImportRequest request;
    request.path = scratch.path("cut.zip");
    request.folder = scratch.path("tables");
    scratch.write("cut.zip", std::string_view{whole}.substr(0, whole.size() / 2));
    CHECK(importTable(request).error().code == ErrorCode::ZipDamaged);
    std::string damaged = whole;
    for (std::size_t i = damaged.size() / 2; i < damaged.size() / 2 + 64; ++i) damaged[i] ^= '\x55';
    scratch.write("cut.zip", damaged);
    CHECK(importTable(request).error().code == ErrorCode::ZipDamaged);
    CHECK_FALSE(std::filesystem::exists(scratch.path("tables") + "/usda-sr_28.table"));
}
