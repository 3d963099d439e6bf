#include "db/search_words.h"

#include <cstddef>

#include "db/word_forms.h"

namespace nettare {

namespace {

/// Base letters of U+00C0 to U+00FF, the second UTF-8 byte 0x80 to 0xBF; a space parts words.
constexpr std::string_view kBaseLetters =
    "aaaaaaaceeeeiiiidnooooo ouuuuyts"
    "aaaaaaaceeeeiiiidnooooo ouuuuyty";

}  // namespace

void foldInto(std::string& result, std::string_view text) {
    result.clear();
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool latin = static_cast<unsigned char>(c) == 0xC3 && i + 1 < text.size();
        if (latin)
            result += kBaseLetters[static_cast<unsigned char>(text[++i]) & 0x3FU];
        else
            result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
}

std::vector<std::string> searchWords(std::string_view text) {
    std::vector<std::string> found;
    std::string word;
    std::string folded;
    foldInto(folded, text);
    for (const char c : folded + " ") {
        if (isWordByte(c)) {
            word += c;
        } else if (!word.empty()) {
            found.push_back(std::move(word));
            word.clear();
        }
    }
    return found;
}

std::string indexQuery(const std::vector<std::string>& words) {
    std::string query;
    for (const std::string& word : words) {
        if (!query.empty()) query += " AND ";
        query += "(\"" + word + "\" *";
        for (const std::string& form : otherForms(word)) query += " OR \"" + form + "\"";
        query += ")";
    }
    return query;
}

}  // namespace nettare
