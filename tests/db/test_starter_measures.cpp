#include <catch2/catch.hpp>
#include <map>

#include "core/food/measure_scaling.h"
#include "core/food/volume_measure.h"
#include "core/nutrition/way_to_grams.h"
#include "db/build_table/text_table.h"
#include "starter.h"

using namespace nettare;

namespace {

/// Fields of a text table in the order of its header.
std::vector<std::vector<std::string>> rowsOf(const std::string& folder, const std::string& file,
                                             const std::string& header) {
    const auto text = readTextTable(folder, file, header);
    REQUIRE(text);
    std::vector<std::vector<std::string>> rows;
    for (const TextRow& row : text->rows) rows.emplace_back(row.fields.begin(), row.fields.end());
    return rows;
}

double numberOf(const std::string& text) {
    return Decimal::read(text)->value();
}

std::string orEmpty(const std::string& field) {
    return field == "-" ? "" : field;
}

/// A dossier of one line that asks for that measure of that food in the words of its table.
Dossier asking(const TableFood& food, const std::string& amount, const std::string& unit,
               const std::string& qualifier) {
    Dossier dossier;
    dossier.foods.emplace_back();
    dossier.foods.back().name = food.name;
    dossier.foods.back().table = food;
    Line line;
    line.id = "line";
    line.name = food.name;
    line.amount = *readAmount(amount);
    line.what = FoodIndex{0};
    line.size = qualifier;
    if (volumeOfMeasure(unit) || unit == "dash")
        line.unit = findUnit(unit == "fl_oz" ? "fl oz" : unit, MeasureSystem::UsCustomary);
    else
        line.piece = unit;
    dossier.recipes.emplace_back();
    dossier.recipes.back().lines.push_back(line);
    return dossier;
}

}  // namespace

TEST_CASE("every measure of every starter food gives the table's grams back", "[starter]") {
    const FoodTable table = openStarter();
    std::size_t asked = 0;
    for (const auto& row :
         rowsOf(NETTARE_RESOURCES "/starter", "measures.txt",
                "number|amount|unit|qualifier|grams|n|standard_deviation_grams")) {
        const TableFood food = foodIn(table, row[0]);
        INFO(row[0] << " " << row[1] << " " << row[2] << " " << row[3]);
        const Dossier dossier = asking(food, row[1], row[2], orEmpty(row[3]));
        const auto grams = waysToGrams(dossier, 0, 0);
        REQUIRE(grams);
        CHECK(grams->way().way == Way::Table);
        CHECK(grams->way().grams.value() == Approx(numberOf(row[4])).epsilon(1e-12));
        CHECK_FALSE(grams->way().sizeNotSaid);
        ++asked;
    }
    CHECK(asked == 1302);
}

TEST_CASE("the starter's volumes that do not scale are named, and no others are", "[starter]") {
    // A tablespoon and a cup of one food: beyond half a gram each and twice their standard errors.
    const std::vector<std::string> known{
        "01032",  // Parmesan, grated: 5 g a tbsp, 100 g a cup (80 g by the tbsp)
        "01056",  // sour cream: 12 g, 230 g (192 g)
        "06164",  // tomato salsa: 36 g for 2 tbsp, 259 g a cup (288 g)
        "11935",  // ketchup: 17 g, 240 g (272 g)
        "11972",  // lemongrass: 4.8 g, 67 g (77 g)
        "12118",  // coconut milk: 15 g, 226 g (240 g)
        "16032",  // red kidney beans, dry: 12.2 g, 184 g (195 g)
        "16424",  // soy sauce, reduced salt: 14.2 g, 255 g (227 g)
        "19304",  // molasses: 20 g, 337 g (320 g)
        "19353",  // maple syrup: 20 g, 83 g a quarter of a cup (80 g)
        "19912",  // agave syrup: 6.9 g a tsp, 55 g a quarter of a cup (83 g)
        "20013",  // bulgur, cooked: 8.4 g, 182 g (134 g)
    };
    const FoodTable table = openStarter();
    std::vector<std::string> found;
    for (const std::string& number : starterNumbers())
        if (!measuresThatDoNotScale(foodIn(table, number)).empty()) found.push_back(number);
    CHECK(found == known);
}

TEST_CASE("of the release's measures at two amounts seven do not scale", "[starter]") {
    std::map<std::pair<std::string, std::string>, TableFood> foods;
    for (const auto& row : rowsOf(NETTARE_TEST_DATA "/starter", "repeated_measures.txt",
                                  "number|amount|unit|grams|n|standard_deviation_grams")) {
        HouseholdMeasure measure{numberOf(row[1]), row[2], "", numberOf(row[3]), 0, {}};
        if (row[4] != "-") measure.n = static_cast<int>(numberOf(row[4]));
        if (row[5] != "-") measure.standardDeviation = numberOf(row[5]);
        foods[{row[0], row[2]}].measures.push_back(measure);
    }
    CHECK(foods.size() == 35);
    std::vector<std::pair<std::string, std::string>> found;
    for (const auto& [key, food] : foods)
        if (!measuresThatDoNotScale(food).empty()) found.push_back(key);
    // Ricotta: 124 g half a cup, 246 g a cup. Barbecue sauce: 143 g, 279 g. Mixed vegetables: 95 g
    // a third of a package, 284 g a package. Tofu: a quarter of one block, a fifth of another.
    // White bread: slices of two loaves.
    CHECK(found == decltype(found){{"01036", "cup"},
                                   {"01037", "cup"},
                                   {"06150", "cup"},
                                   {"11583", "package (10 oz)"},
                                   {"16126", "block"},
                                   {"16127", "block"},
                                   {"18069", "slice"}});
}
