#include "db/search/asked_words.h"

#include <algorithm>
#include <cstddef>

#include "core/support/text.h"
#include "db/search/embedded_words.h"
#include "db/search_words.h"
#include "db/word_forms.h"

namespace nettare {

namespace {

/// Letters of a word alike that must be typed before it counts.
constexpr std::size_t kFewestOfAlike = 3;

void addOnce(std::vector<std::string>& words, std::string_view word) {
    if (std::ranges::find(words, word) == words.end()) words.emplace_back(word);
}

void addWithForms(std::vector<std::string>& words, std::string_view word) {
    for (const std::string& form : allForms(word)) addOnce(words, form);
}

const AlikeWords& alikeWords() {
    static const AlikeWords kWords = readAlikeWords(alikeWordsText());
    return kWords;
}

AskedWord askedWord(const std::string& typed) {
    AskedWord word{.typed = typed, .whole = {}, .begun = {}, .starts = {typed}};
    addWithForms(word.whole, typed);
    if (typed.size() < kFewestOfAlike) return word;
    const AlikeWords& all = alikeWords();
    for (auto at = all.lower_bound(typed); at != all.end() && at->first.starts_with(typed); ++at)
        for (const std::string& also : at->second)
            addWithForms(at->first == typed ? word.whole : word.begun, also);
    return word;
}

std::string inQuotes(std::string_view word) {
    return "\"" + std::string{word} + "\"";
}

bool beginsWithAny(std::string_view word, const std::vector<std::string>& starts) {
    return std::ranges::any_of(starts, [&](const auto& start) { return word.starts_with(start); });
}

/// The words of a query that answer to one asked for.
std::string alternatives(const AskedWord& word) {
    std::string query;
    const auto add = [&query](const std::string& text) {
        if (!query.empty()) query += " OR ";
        query += text;
    };
    for (const std::string& start : word.starts) add(inQuotes(start) + " *");
    for (const auto* words : {&word.whole, &word.begun})
        for (const std::string& other : *words)
            if (!beginsWithAny(other, word.starts)) add(inQuotes(other));
    return query;
}

}  // namespace

AlikeWords readAlikeWords(std::string_view text) {
    AlikeWords words;
    for (const std::string_view line : split(text, '\n')) {
        const std::size_t bar = line.find('|');
        if (line.starts_with('#') || line == "word|also" || bar == std::string_view::npos) continue;
        auto& also = words[std::string{line.substr(0, bar)}];
        for (const std::string_view word : split(trimmed(line.substr(bar + 1)), ' '))
            also.emplace_back(word);
    }
    return words;
}

std::vector<AskedWord> askedWords(std::string_view text) {
    std::vector<AskedWord> asked;
    for (const std::string& typed : searchWords(text)) {
        if (asked.size() == kMostWords) break;
        if (std::ranges::find(asked, typed, &AskedWord::typed) == asked.end())
            asked.push_back(askedWord(typed));
    }
    return asked;
}

std::string askedQuery(const std::vector<AskedWord>& words) {
    std::string query;
    for (const AskedWord& word : words) {
        if (!query.empty()) query += " AND ";
        query += "(" + alternatives(word) + ")";
    }
    return query;
}

}  // namespace nettare
