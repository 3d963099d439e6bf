#include "db/import/table_writer.h"

#include <catch2/catch.hpp>
#include <limits>

#include "db/food_table.h"
#include "scratch.h"

using namespace nettare;

namespace {

TableTarget moonTable(const Scratch& scratch) {
    return {.table = "moon",
            .release = "1",
            .citation = "Foods of the moon.",
            .folder = scratch.path("tables"),
            .dryRun = false};
}

NewFood newFood(std::string number, std::string name, int group) {
    NewFood food;
    food.number = std::move(number);
    food.name = std::move(name);
    food.group = group;
    return food;
}

NewValue valueOf(Component component, double per100g) {
    NewValue value;
    value.component = static_cast<int>(indexOf(component));
    value.per100g = per100g;
    return value;
}

HouseholdMeasure cupOf(double grams) {
    HouseholdMeasure measure;
    measure.unit = "cup";
    measure.grams = grams;
    return measure;
}

}  // namespace

TEST_CASE("rows may come in any order, and what comes twice is refused", "[import]") {
    const Scratch scratch;
    auto writer = TableWriter::begin(moonTable(scratch));
    REQUIRE(writer);
    const int group = writer->group("dust");
    CHECK(writer->group("dust") == group);
    const auto one = writer->food(newFood("1", "grey dust", group));
    const auto two = writer->food(newFood("2", "white dust", group));
    REQUIRE(one);
    REQUIRE(two);
    CHECK_FALSE(writer->food(newFood("1", "again", group)));
    CHECK(writer->find("2") == two);
    CHECK_FALSE(writer->find("3"));
    CHECK(writer->value(*one, valueOf(Component::NA, 3)));
    CHECK_FALSE(writer->value(*one, valueOf(Component::NA, 4)));
    CHECK(writer->value(*two, valueOf(Component::NA, 5)));
    // Back to the first, whose values are written already.
    CHECK(writer->value(*one, valueOf(Component::CA, 6)));
    CHECK_FALSE(writer->value(*one, valueOf(Component::NA, 7)));
    CHECK(writer->value(*one, valueOf(Component::ENERC_KCAL, 8)));
    CHECK_FALSE(writer->value(*two, valueOf(Component::CA, -1)));
    CHECK_FALSE(
        writer->value(*two, valueOf(Component::CA, std::numeric_limits<double>::infinity())));
    CHECK_FALSE(writer->measure(*one, cupOf(0)));
    CHECK(writer->measure(*one, cupOf(90)));
    CHECK(writer->rows().values == 4);
    CHECK(writer->finish() == TablePut::Written);
    const auto table = FoodTable::open(scratch.path("tables") + "/moon_1.table");
    REQUIRE(table);
    const auto food = *table->find("1");
    CHECK(food->profile[Component::NA] == 3);
    CHECK(food->profile[Component::CA] == 6);
    const auto hits = table->search("grey dust", 5);
    REQUIRE(hits);
    REQUIRE(hits->size() == 1);
    CHECK(hits->front().energyKcalPer100g == 8);
    CHECK(hits->front().knownComponents == 3);
}

TEST_CASE("what later files tell of a food changes it", "[import]") {
    const Scratch scratch;
    auto writer = TableWriter::begin(moonTable(scratch));
    REQUIRE(writer);
    const auto food = writer->food(newFood("1", "crater bread", writer->group("dust")));
    writer->setGroup(*food, writer->group("bread"));
    writer->setPlace(*food, ProcessingPlace::Branded);
    writer->addOtherNames(*food, {"Maria loaf"});
    writer->addOtherNames(*food, {"Luna Works", "000123"});
    writer->addOtherNames(*food, {});
    writer->setFactors(*food, {.nitrogen = 5.7, .protein = 4, .fat = {}, .carbohydrate = 4});
    REQUIRE(writer->finish());
    const auto table = FoodTable::open(scratch.path("tables") + "/moon_1.table");
    const auto found = *table->find("1");
    CHECK(found->group == "bread");
    CHECK(found->otherNames == std::vector<std::string>{"Maria loaf", "Luna Works", "000123"});
    CHECK(found->factors.nitrogen == 5.7);
    CHECK_FALSE(found->factors.fat);
    CHECK(table->search("luna", 5)->front().place == ProcessingPlace::Branded);
}

TEST_CASE("groups know what is assumed of their foods, and what they weigh", "[import]") {
    const Scratch scratch;
    auto writer = TableWriter::begin(moonTable(scratch));
    REQUIRE(writer);
    const int dust = writer->group("dust");
    const int ice = writer->group("ice");
    for (int i = 0; i < 3; ++i) {
        const auto food = writer->food(newFood(std::to_string(i), "dust", dust));
        NewValue value = valueOf(Component::NA, 10);
        value.standardError = 1 + i;
        value.dataPoints = 4;
        REQUIRE(writer->value(*food, value));
        REQUIRE(writer->measure(*food, {.amount = 1,
                                        .unit = "cup",
                                        .qualifier = "",
                                        .grams = 200.0 + i,
                                        .n = 3,
                                        .standardDeviation = 20}));
    }
    const auto snow = writer->food(newFood("9", "snow", ice));
    REQUIRE(writer->value(*snow, valueOf(Component::NA, 2)));
    REQUIRE(writer->finish());
    const auto table = FoodTable::open(scratch.path("tables") + "/moon_1.table");
    // The medians of SE sqrt(n) / mean: 2 x 2 / 10.
    const auto na = indexOf(Component::NA);
    CHECK((*table->find("9"))->profile.spread[na].assumedRelative == Approx(0.4));
    const auto density = table->groupDensity("dust");
    REQUIRE(*density);
    CHECK((*density)->foods == 3);
    CHECK((*density)->gramsPerMl == Approx(201 / 236.5882365));
    CHECK(table->measureSpreads().volumeRows == 3);
    CHECK(table->measureSpreads().volumeRelative == Approx(20.0 / 201));
}

TEST_CASE("a writer that never finishes leaves nothing", "[import]") {
    const Scratch scratch;
    {
        auto writer = TableWriter::begin(moonTable(scratch));
        REQUIRE(writer);
        static_cast<void>(writer->food(newFood("1", "grey dust", writer->group("dust"))));
        CHECK(scratch.has("tables/moon_1.table.partial"));
    }
    CHECK_FALSE(scratch.has("tables/moon_1.table.partial"));
    CHECK_FALSE(scratch.has("tables/moon_1.table"));
}

TEST_CASE("a folder that cannot be made is told", "[import]") {
    const Scratch scratch;
    scratch.write("file", "");
    TableTarget target = moonTable(scratch);
    target.folder = scratch.path("file") + "/tables";
    const auto writer = TableWriter::begin(target);
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == ErrorCode::FileNotWritable);
    CHECK(writer.error().file == target.folder);
    CHECK_FALSE(writer.error().value("reason").empty());
}
