#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "db/search_words.h"
#include "db/word_forms.h"
#include "search/phrases.h"
#include "sr28.h"

namespace nettare {

namespace {

constexpr std::size_t kShortest = 4;

/// The words of the full table's names from four letters on.
std::vector<std::string> vocabulary() {
    SQLite::Database database{NETTARE_SR28_TABLE};
    SQLite::Statement rows{database, "SELECT word FROM word ORDER BY word"};
    std::vector<std::string> words;
    while (rows.executeStep()) {
        std::string word = rows.getColumn(0).getString();
        const bool letters = std::ranges::all_of(word, [](char c) { return c >= 'a' && c <= 'z'; });
        if (word.size() >= kShortest && letters) words.push_back(std::move(word));
    }
    return words;
}

/// The word with one letter left out, put in, replaced, or swapped with the next.
std::string withSlip(const std::string& word, std::mt19937& random) {
    for (;;) {
        std::string typed = word;
        const std::size_t at = random() % word.size();
        const char letter = static_cast<char>('a' + random() % 26);
        const auto place = typed.begin() + static_cast<std::ptrdiff_t>(at);
        const auto kind = random() % 4;
        if (kind == 0) typed.erase(place);
        if (kind == 1) typed.insert(place, letter);
        if (kind == 2) *place = letter;
        if (kind == 3 && at + 1 < typed.size()) std::swap(*place, *(place + 1));
        if (typed != word) return typed;
    }
}

bool holds(const FoodTables& tables, const FoodHit& hit, const std::string& asked) {
    const auto isIt = [&](const std::string& word) { return sameWord(word, asked); };
    for (const FoodTable& table : tables.tables()) {
        const auto food = table.isOf(hit.row) ? table.find(hit.row.number)
                                              : Result<std::optional<TableFood>>{std::nullopt};
        REQUIRE(food);
        if (!*food) continue;
        std::string names = (*food)->name;
        for (const std::string& other : (*food)->otherNames) names += " " + other;
        if (std::ranges::any_of(searchWords(names), isIt)) return true;
    }
    return false;
}

}  // namespace

TEST_CASE("of random slips, the first ten foods have the right word", "[phrases]") {
    if (!hasSr28()) return;
    const FoodTables tables = openStarterAndSr28();
    const std::vector<std::string> words = vocabulary();
    REQUIRE(words.size() > 3000);
    std::mt19937 random{20261126};
    int right = 0;
    constexpr int kSlips = 1000;
    for (int i = 0; i < kSlips; ++i) {
        const std::string& word = words[random() % words.size()];
        const auto search = tables.search(withSlip(word, random), 10);
        REQUIRE(search);
        right += std::ranges::any_of(search->hits,
                                     [&](const FoodHit& hit) { return holds(tables, hit, word); });
    }
    WARN(right << " of " << kSlips << " slips");
    CHECK(right >= kSlips * 95 / 100);
}

}  // namespace nettare
