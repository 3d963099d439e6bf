#include "app/scale/step_lines.h"

#include <algorithm>

#include "app/sheet/document_texts.h"
#include "core/food/piece_word.h"
#include "core/support/text.h"

namespace nettare {

namespace {

bool isBetweenWords(char c) {
    const std::string_view marks = " \t\n.,;:!?()/\"";
    return marks.find(c) != std::string_view::npos;
}

/// The words of a text, in lower case and the singular.
std::vector<std::string> wordsIn(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : std::string{text} + " ") {
        if (!isBetweenWords(c)) {
            word += c;
            continue;
        }
        if (!word.empty()) words.push_back(singularOf(lowerAscii(word)));
        word.clear();
    }
    return words;
}

/// The words of a food's name, before the first comma.
std::vector<std::string> nameWords(const Json& document, const Json& line) {
    const std::string name =
        memberText(entryIn(document, "foods", memberText(&line, "food")), "name");
    return wordsIn(std::string_view{name}.substr(0, name.find(',')));
}

bool holds(const std::vector<std::string>& words, const std::string& word) {
    return std::ranges::find(words, word) != words.end();
}

bool sharesLastWord(const Json& document, const Json& line, const std::string& word) {
    return std::ranges::any_of(entriesIn(document, "lines"), [&](const Json& other) {
        const auto name = nameWords(document, other);
        return memberText(&other, "food") != memberText(&line, "food") && !name.empty() &&
               name.back() == word;
    });
}

/// By its last word alone, where no other food of the recipe ends in it.
bool isNamed(const Json& document, const Json& line, const std::vector<std::string>& words) {
    const auto name = nameWords(document, line);
    if (name.empty() || !holds(words, name.back())) return false;
    const auto inText = [&](const std::string& word) { return holds(words, word); };
    return !sharesLastWord(document, line, name.back()) || std::ranges::all_of(name, inText);
}

}  // namespace

std::vector<std::string> linesNamedIn(const Json& document, std::string_view text) {
    const std::vector<std::string> words = wordsIn(text);
    const bool all = holds(words, "everything");
    std::vector<std::string> lines;
    for (const Json& line : entriesIn(document, "lines"))
        if (all || isNamed(document, line, words)) lines.push_back(memberText(&line, "id"));
    return lines;
}

}  // namespace nettare
