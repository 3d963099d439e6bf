#include "db/build_table/processing_place.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include "db/search_words.h"

namespace nettare {

namespace {

/// Groups of the starter, then of USDA tables, whose foods are made of several.
constexpr std::array<std::string_view, 18> kComposedGroups{"alcohol",
                                                           "bread",
                                                           "chocolate",
                                                           "condiment",
                                                           "cured meat",
                                                           "drink",
                                                           "leavening",
                                                           "pastry",
                                                           "sausage",
                                                           "stock",
                                                           "sweet",
                                                           "baked products",
                                                           "beverages",
                                                           "meals, entrees, and side dishes",
                                                           "sausages and luncheon meats",
                                                           "snacks",
                                                           "soups, sauces, and gravies",
                                                           "sweets"};

constexpr std::array<std::string_view, 4> kBrandedGroups{
    "baby foods", "branded food products database", "fast foods", "restaurant foods"};

/// What begins the names of foods that somebody else made, in tables without such groups.
constexpr std::array<std::string_view, 9> kMadeElsewhere{
    "baby food",  "babyfood",     "child formula",   "fast food",     "infant formula",
    "restaurant", "school lunch", "toddler formula", "usda commodity"};

constexpr std::array<std::string_view, 16> kComposedStarts{
    "candies",        "catsup",     "cereals ready",    "cookies",   "creamy dressing", "dip",
    "dressing",       "formulated", "frozen novelties", "ice cream", "imitation",       "ketchup",
    "margarine like", "mayonnaise", "salad dressing",   "snacks"};

constexpr std::array<std::string_view, 41> kProcessedWords{
    "baked",    "blanched", "boiled",     "braised",     "breaded",    "broiled",    "browned",
    "candied",  "canned",   "cooked",     "concentrate", "cured",      "dehydrated", "dried",
    "drained",  "fried",    "frozen",     "grilled",     "heated",     "puree",      "industrial",
    "instant",  "juice",    "microwaved", "paste",       "pickled",    "poached",    "powder",
    "prepared", "roasted",  "sauteed",    "scrambled",   "simmered",   "smoked",     "steamed",
    "stewed",   "stir",     "sweetened",  "toasted",     "evaporated", "condensed"};

/// Words in capitals that are no maker's name.
constexpr std::array<std::string_view, 12> kOtherCapitals{
    "ARA", "BBQ", "DHA", "EPA", "MSG", "NFS", "RTD", "RTE", "UHT", "UPC", "USA", "USDA"};

constexpr std::size_t kShortestBrand = 3;

bool isUpper(char c) {
    return c >= 'A' && c <= 'Z';
}
bool isLower(char c) {
    return c >= 'a' && c <= 'z';
}

template <std::size_t Count>
bool isOneOf(const std::array<std::string_view, Count>& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

/// A run of capitals in a name that is not all in capitals.
bool namesMaker(std::string_view name) {
    if (std::ranges::none_of(name, isLower)) return false;
    for (std::size_t from = 0; from < name.size();) {
        std::size_t to = from;
        while (to < name.size() && isUpper(name[to])) ++to;
        if (to - from >= kShortestBrand && !isOneOf(kOtherCapitals, name.substr(from, to - from)))
            return true;
        from = to + 1;
    }
    return false;
}

std::string inSmallLetters(std::string_view text) {
    std::string small{text};
    std::ranges::transform(small, small.begin(), [](char c) {
        return isUpper(c) ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return small;
}

std::string spaced(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) (text += text.empty() ? "" : " ") += word;
    return text;
}

template <std::size_t Count>
bool beginsWithOneOf(const std::array<std::string_view, Count>& starts, std::string_view text) {
    return std::ranges::any_of(starts,
                               [&](std::string_view start) { return text.starts_with(start); });
}

}  // namespace

ProcessingPlace processingPlace(std::string_view name, std::string_view group) {
    const std::vector<std::string> words = searchWords(name);
    const std::string text = spaced(words);
    const std::string kind = inSmallLetters(group);
    if (isOneOf(kBrandedGroups, kind) || beginsWithOneOf(kMadeElsewhere, text) || namesMaker(name))
        return ProcessingPlace::Branded;
    if (isOneOf(kComposedGroups, kind) || beginsWithOneOf(kComposedStarts, text))
        return ProcessingPlace::Composed;
    return std::ranges::any_of(words,
                               [](const auto& word) { return isOneOf(kProcessedWords, word); })
               ? ProcessingPlace::Processed
               : ProcessingPlace::Plain;
}

}  // namespace nettare
