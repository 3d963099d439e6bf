#include "db/build_table/processing_place.h"

#include <algorithm>
#include <array>

#include "db/search_words.h"

namespace nettare {

namespace {

constexpr std::array<std::string_view, 11> kComposedGroups{
    "alcohol",   "bread",  "chocolate", "condiment", "cured meat", "drink",
    "leavening", "pastry", "sausage",   "stock",     "sweet"};

constexpr std::array<std::string_view, 25> kProcessedWords{
    "baked",     "boiled",     "browned",   "candied", "canned",  "cooked", "dried",
    "drained",   "fried",      "frozen",    "puree",   "instant", "juice",  "paste",
    "powder",    "roasted",    "sauteed",   "smoked",  "steamed", "stewed", "stir",
    "sweetened", "evaporated", "condensed", "lox"};

}  // namespace

ProcessingPlace processingPlace(std::string_view name, std::string_view group) {
    if (std::ranges::find(kComposedGroups, group) != kComposedGroups.end())
        return ProcessingPlace::Composed;
    const auto processed = [](const std::string& word) {
        return std::ranges::find(kProcessedWords, word) != kProcessedWords.end();
    };
    return std::ranges::any_of(searchWords(name), processed) ? ProcessingPlace::Processed
                                                             : ProcessingPlace::Plain;
}

}  // namespace nettare
