#pragma once

#include <string>
#include <vector>

#include "db/food_tables.h"

namespace nettare {

/// A line of tests/data/search/phrases.txt.
struct Phrase {
    bool heldOut = false;
    std::string words;
    std::vector<std::string> numbers;  ///< of rows that it may mean
};

/// All lines. Tests print none that is held out: nobody who works on the search reads those.
[[nodiscard]] std::vector<Phrase> readPhrases();

/// The starter and the whole Standard Reference as one; hasSr28() must be true.
[[nodiscard]] FoodTables openStarterAndSr28();

}  // namespace nettare
