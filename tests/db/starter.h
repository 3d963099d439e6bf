#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/food_table.h"

/// The starter table as built; the test fails where it cannot be opened.
[[nodiscard]] nettare::FoodTable openStarter();

/// The food of that number; the test fails where there is none.
[[nodiscard]] nettare::TableFood foodIn(const nettare::FoodTable& table, std::string_view number);

/// The numbers of all starter foods, from the text form.
[[nodiscard]] std::vector<std::string> starterNumbers();

/// The rows below the header of tests/data/starter/<name>: fields between commas.
[[nodiscard]] std::vector<std::vector<std::string>> starterCases(const std::string& name);

/// Numbers of the hits for some words, best first.
[[nodiscard]] std::vector<std::string> found(const nettare::FoodTable& table,
                                             std::string_view words, std::size_t most = 20);
