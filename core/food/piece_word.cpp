#include "core/food/piece_word.h"

#include <array>
#include <utility>

namespace nettare {

namespace {

struct Forms {
    std::string_view one, several;
};

/// What the rules below would miss, by the end of the word.
constexpr std::array<Forms, 16> kExceptions{{
    {"leaf", "leaves"},
    {"loaf", "loaves"},
    {"half", "halves"},
    {"calf", "calves"},
    {"knife", "knives"},
    {"potato", "potatoes"},
    {"tomato", "tomatoes"},
    {"mango", "mangoes"},
    {"cookie", "cookies"},
    {"brownie", "brownies"},
    {"pie", "pies"},
    {"smoothie", "smoothies"},
    {"foot", "feet"},
    {"radish", "radishes"},
    {"asparagus", "asparagus"},
    {"couscous", "couscous"},
}};

/// The word with one end taken away and another put there.
std::string ending(std::string_view word, std::size_t less, std::string_view end) {
    return std::string{word.substr(0, word.size() - less)} + std::string{end};
}

/// True where the exception is the whole last word: "bay leaf", not "magpie".
bool endsWithWord(std::string_view text, std::string_view word) {
    if (!text.ends_with(word)) return false;
    return text.size() == word.size() || text[text.size() - word.size() - 1] == ' ';
}

bool endsInHiss(std::string_view word) {
    return word.ends_with("x") || word.ends_with("ch") || word.ends_with("sh") ||
           word.ends_with("ss");
}

bool endsInConsonantY(std::string_view word) {
    constexpr std::string_view kVowels = "aeiou";
    return word.size() > 1 && word.back() == 'y' &&
           kVowels.find(word[word.size() - 2]) == std::string_view::npos;
}

}  // namespace

std::string singularOf(std::string_view word) {
    for (const auto& [one, several] : kExceptions)
        if (endsWithWord(word, several)) return ending(word, several.size(), one);
    if (word.size() > 4 && word.ends_with("ies")) return ending(word, 3, "y");
    if (word.ends_with("es") && endsInHiss(word.substr(0, word.size() - 2)))
        return ending(word, 2, "");
    const bool plural = word.size() > 2 && word.ends_with("s") && !word.ends_with("ss") &&
                        !word.ends_with("us") && !word.ends_with("is");
    return plural ? ending(word, 1, "") : std::string{word};
}

std::string pluralOf(std::string_view word) {
    if (word.empty() || singularOf(word) != word) return std::string{word};
    for (const auto& [one, several] : kExceptions)
        if (endsWithWord(word, one)) return ending(word, one.size(), several);
    if (endsInHiss(word)) return ending(word, 0, "es");
    if (endsInConsonantY(word)) return ending(word, 1, "ies");
    // Words in -us and -is are as often plurals of their own as not: asparagus, hummus.
    return word.back() == 's' ? std::string{word} : ending(word, 0, "s");
}

bool samePiece(std::string_view a, std::string_view b) {
    return a == b || singularOf(a) == singularOf(b);
}

}  // namespace nettare
