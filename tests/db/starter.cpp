#include "starter.h"

#include <catch2/catch.hpp>
#include <fstream>

#include "core/support/text.h"
#include "db/build_table/text_table.h"

using namespace nettare;

FoodTable openStarter() {
    auto table = FoodTable::open(NETTARE_STARTER_TABLE);
    REQUIRE(table);
    return std::move(*table);
}

TableFood foodIn(const FoodTable& table, std::string_view number) {
    const auto food = table.find(number);
    REQUIRE(food);
    REQUIRE(*food);
    return **food;
}

std::vector<std::string> starterNumbers() {
    const auto text = readTextTable(NETTARE_RESOURCES "/starter", "foods.txt",
                                    "number|name|group|refuse_percent|refuse_note|nitrogen_factor|"
                                    "protein_kcal_per_g|fat_kcal_per_g|carbohydrate_kcal_per_g");
    REQUIRE(text);
    std::vector<std::string> numbers;
    for (const TextRow& row : text->rows) numbers.push_back(row.fields.front());
    return numbers;
}

std::vector<std::vector<std::string>> starterCases(const std::string& name) {
    std::ifstream stream{NETTARE_TEST_DATA "/starter/" + name};
    std::vector<std::vector<std::string>> rows;
    bool header = true;
    for (std::string line; std::getline(stream, line);) {
        if (line.starts_with('#')) continue;
        std::vector<std::string> fields;
        for (const std::string_view field : split(line, ',')) fields.emplace_back(field);
        if (!header) rows.push_back(std::move(fields));
        header = false;
    }
    REQUIRE_FALSE(rows.empty());
    return rows;
}

std::vector<std::string> found(const FoodTable& table, std::string_view words, std::size_t most) {
    const auto hits = table.search(words, most);
    REQUIRE(hits);
    std::vector<std::string> numbers;
    for (const FoodHit& hit : *hits) numbers.push_back(hit.row.number);
    return numbers;
}
