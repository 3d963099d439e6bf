#include "db/search/table_words.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <memory>

#include "db/columns.h"

namespace nettare {

namespace {

std::optional<WordFound> firstOf(SQLite::Statement& query) {
    std::optional<WordFound> found;
    if (query.executeStep()) found = WordFound{textAt(query, 0), query.getColumn(1).getInt()};
    query.reset();
    return found;
}

}  // namespace

WordList wordsOfTable(SQLite::Database& database) {
    const auto seek = std::make_shared<SQLite::Statement>(
        database, "SELECT word, foods FROM word WHERE word >= ? ORDER BY word LIMIT 1");
    const auto used = std::make_shared<SQLite::Statement>(
        database,
        "SELECT word, foods FROM word WHERE word >= ? AND word < ? ORDER BY foods DESC, word "
        "LIMIT 1");
    return {.seek =
                [seek](const std::string& from) {
                    seek->bind(1, from);
                    return firstOf(*seek);
                },
            .mostUsed =
                [used](const std::string& beginning) {
                    used->bind(1, beginning);
                    used->bind(2, beginning + '\xFF');
                    return firstOf(*used);
                }};
}

bool hasWord(const WordList& words, const AskedWord& asked) {
    const auto begins = [&](const std::string& start) {
        const auto found = words.seek(start);
        return found && found->word.starts_with(start);
    };
    const auto stands = [&](const std::string& word) {
        const auto found = words.seek(word);
        return found && found->word == word;
    };
    return std::ranges::any_of(asked.starts, begins) || std::ranges::any_of(asked.whole, stands) ||
           std::ranges::any_of(asked.begun, stands);
}

}  // namespace nettare
