#include "odd_texts.h"

#include "core/food/component.h"
#include "core/food/label_words.h"
#include "core/recipe/words.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

std::string repeated(std::string_view piece, std::size_t times) {
    std::string text;
    for (std::size_t i = 0; i < times; ++i) text += piece;
    return text;
}

std::string oddDecimal(std::mt19937& random) {
    static constexpr std::array<std::string_view, 30> kDecimals{
        "0",     "0.0",    "-0",      "000",      "007.50",    "1",
        "12.5",  "999999", "1000000", "0.000001", "0.0000001", "123456.654321",
        "-3.25", "-0.1",   "+1",      "1,5",      "1.",        ".5",
        "1.2.3", "1e3",    "0x1",     " 1",       "1 ",        "١",
        "−1",    "--1",    "-",       ".",        "1\n",       "0.000"};
    return std::string{kDecimals[random() % kDecimals.size()]};
}

std::string oddTime(std::mt19937& random) {
    static constexpr std::array<std::string_view, 20> kTimes{"2026-03-07T18:12:09+01:00",
                                                             "2026-03-07T18:12Z",
                                                             "2026-12-31T23:59:59-23:59",
                                                             "2026-03-07T18:12",
                                                             "2026-03-07",
                                                             "2026-03-07 18:12Z",
                                                             "2026-13-07T18:12Z",
                                                             "2026-00-07T18:12Z",
                                                             "2026-02-32T18:12Z",
                                                             "2026-03-07T24:00Z",
                                                             "2026-03-07T18:60Z",
                                                             "2026-03-07T18:12:60Z",
                                                             "2026-03-07T18:12:9Z",
                                                             "2026-03-07T18:12+1:00",
                                                             "2026-03-07T18:12+01:60",
                                                             "2026-03-07T18:12+0100",
                                                             "2026-03-07T18:12:09.5Z",
                                                             "2026",
                                                             "2026-03",
                                                             "2026-03-07T18:12:09z"};
    return std::string{kTimes[random() % kTimes.size()]};
}

std::vector<std::string> allWords() {
    std::vector<std::string> words;
    const auto add = [&](const auto& known) {
        for (const auto& word : known) words.emplace_back(word.word);
    };
    add(kStateWords);
    add(kSeriesWords);
    add(kUseWords);
    add(kWayWords);
    add(kBasisWords);
    add(kAddedSugarWords);
    add(kSystemWords);
    add(kLabelRulesWords);
    for (const std::string_view unit : kUnitSymbols) words.emplace_back(unit);
    for (const ComponentFacts& facts : allComponents()) words.emplace_back(facts.tagname);
    return words;
}

const std::vector<std::string>& knownWords() {
    static const std::vector<std::string> kWords = allWords();
    return kWords;
}

std::string oddWord(std::string word, std::mt19937& random) {
    switch (random() % 6) {
        case 0:
            return word + " ";
        case 1:
            return word.substr(1);
        case 2:
            word.back() = static_cast<char>(word.back() ^ 0x20);
            return word;
        case 3:
            return knownWords()[random() % knownWords().size()];
        default: {
            // A neighbour is often of the same kind of words.
            const auto place = std::ranges::find(knownWords(), word) - knownWords().begin();
            const std::size_t next = static_cast<std::size_t>(place) + 1;
            return knownWords()[next % knownWords().size()];
        }
    }
}

std::string oddName(std::mt19937& random) {
    static constexpr std::array<std::size_t, 8> kSizes{1, 40, 41, 64, 65, 200, 201, 4001};
    static constexpr std::array<std::string_view, 3> kPieces{"a", "ü", "🍋"};
    static const std::array<std::string, 20> kNames{"",
                                                    "a",
                                                    "zero",
                                                    "-a",
                                                    "a-",
                                                    "A",
                                                    "a b",
                                                    "9",
                                                    "½",
                                                    "a\nb",
                                                    "tab\there",
                                                    "del\x7f",
                                                    "\x01",
                                                    "é",
                                                    "\u0085next",
                                                    std::string{"nul\0here", 8},
                                                    "  ",
                                                    "turn\u202eed",
                                                    "part\u2029ed",
                                                    "iso\u2069late"};
    if (random() % 2 == 0) return kNames[random() % kNames.size()];
    return repeated(kPieces[random() % kPieces.size()], kSizes[random() % kSizes.size()]);
}

bool isNumeric(const std::string& text) {
    return text.find_first_not_of("0123456789.-") == std::string::npos;
}

}  // namespace

std::string oddText(const std::string& text, std::mt19937& random) {
    const std::size_t kind = random() % 8;
    if (kind == 0) return oddName(random);
    if (kind == 1) return oddDecimal(random);
    if (isNumeric(text)) return oddDecimal(random);
    if (text.starts_with("2026-")) return oddTime(random);
    const bool isWord = std::ranges::find(knownWords(), text) != knownWords().end();
    return isWord ? oddWord(text, random) : oddName(random);
}

}  // namespace nettare
