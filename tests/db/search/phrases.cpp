#include "search/phrases.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

#include "core/support/text.h"

namespace nettare {

std::vector<Phrase> readPhrases() {
    std::vector<Phrase> phrases;
    std::ifstream file{NETTARE_TEST_DATA "/search/phrases.txt"};
    for (std::string line; std::getline(file, line);) {
        const auto fields = split(line, '|');
        if (line.starts_with('#') || fields.size() != 5 || fields[0] == "half") continue;
        Phrase phrase{.heldOut = fields[0] == "held_out",
                      .words = std::string{fields[2]},
                      .numbers = {std::string{fields[3]}}};
        if (fields[4] != "-")
            for (const std::string_view number : split(fields[4], ','))
                phrase.numbers.emplace_back(trimmed(number));
        phrases.push_back(std::move(phrase));
    }
    return phrases;
}

FoodTables openStarterAndSr28() {
    const std::filesystem::path folder = std::filesystem::path{NETTARE_SR28_TABLE}.parent_path();
    auto tables = FoodTables::open({NETTARE_STARTER_TABLE, folder.string()});
    REQUIRE(tables);
    REQUIRE(tables->tables().size() == 2);
    return std::move(*tables);
}

}  // namespace nettare
