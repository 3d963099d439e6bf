#include "db/search/name_words.h"

#include <algorithm>
#include <array>
#include <cstddef>

#include "db/search_words.h"

namespace nettare {

namespace {

/// Classes that a table puts before the thing itself.
constexpr std::array<std::string_view, 35> kClasses{
    "beef",    "beverage", "beverages",   "candies",    "cereals", "cheese",   "chicken",
    "cookies", "crackers", "crustaceans", "duck",       "emu",     "fish",     "game",
    "goose",   "lamb",     "leavening",   "lettuce",    "melons",  "mollusks", "mushrooms",
    "nuts",    "ostrich",  "peppers",     "pork",       "sausage", "seaweed",  "seeds",
    "snacks",  "spices",   "squash",      "sweeteners", "syrups",  "turkey",   "veal"};

/// Words that tell no other thing apart; for the plain thing they need not be asked for.
constexpr std::array<std::string_view, 34> kNeutral{
    "a",         "all",      "and",    "commercial", "commercially", "common", "cultured",
    "cured",     "dry",      "fluid",  "for",        "fresh",        "from",   "grade",
    "in",        "includes", "mature", "mixed",      "of",           "or",     "plain",
    "processed", "raw",      "ready",  "regular",    "seeds",        "serve",  "source",
    "species",   "the",      "to",     "types",      "varieties",    "whole"};

/// Words that tell a kind, so that no thing is named by them alone.
constexpr std::array<std::string_view, 15> kKinds{"bitter", "black", "brown", "dark",   "green",
                                                  "hot",    "light", "red",   "sour",   "stalks",
                                                  "summer", "sweet", "white", "winter", "yellow"};

/// Parts behind a class that may name the thing.
constexpr int kPartsBehindClass = 2;

static_assert(std::ranges::is_sorted(kClasses) && std::ranges::is_sorted(kNeutral) &&
              std::ranges::is_sorted(kKinds));

template <std::size_t Count>
bool isAmong(const std::array<std::string_view, Count>& words, std::string_view word) {
    return std::ranges::binary_search(words, word);
}

bool endsHead(std::string_view word) {
    return word == "in" || word == "with";
}

}  // namespace

const std::vector<NameWord>& NameWords::of(std::string_view name) {
    foldInto(folded_, name);
    words_.clear();
    int part = 0;
    int brackets = 0;
    std::size_t start = 0;
    for (std::size_t at = 0; at <= folded_.size(); ++at) {
        const char c = at < folded_.size() ? folded_[at] : ',';
        if (isWordByte(c)) continue;
        if (at > start) {
            const std::string_view word = std::string_view{folded_}.substr(start, at - start);
            words_.push_back({.word = word, .part = part, .aside = brackets > 0});
        }
        start = at + 1;
        if (c == '(') ++brackets;
        if (c == ')' && brackets > 0) --brackets;
        if (c == ',' && brackets == 0) ++part;
    }
    findHeads();
    return words_;
}

void NameWords::findHeads() {
    int partsBehind = 0;  // that may still have a head word
    for (std::size_t from = 0; from < words_.size();) {
        const int part = words_[from].part;
        NameWord* last = nullptr;
        bool telling = false;
        bool ended = false;
        std::size_t at = from;
        for (; at < words_.size() && words_[at].part == part; ++at) {
            NameWord& word = words_[at];
            word.neutral = isAmong(kNeutral, word.word);
            word.classWord = part == 0 && isAmong(kClasses, word.word);
            if (word.classWord) partsBehind = kPartsBehindClass + 1;
            ended = ended || word.aside || (at > from && endsHead(word.word));
            if (ended) continue;
            if (last == nullptr || !isAmong(kKinds, word.word)) last = &word;
            telling = telling || !word.neutral;
        }
        if (last != nullptr && (part == 0 || (partsBehind > 0 && !isAmong(kKinds, last->word))))
            last->head = true;
        if (telling && partsBehind > 0) --partsBehind;
        from = at;
    }
}

}  // namespace nettare
