#pragma once

#include "db/search/asked_words.h"
#include "db/search/near_words.h"

namespace SQLite {
class Database;
}

namespace nettare {

/// The words of a table file, read as they are needed. Its functions throw SQLite::Exception; the
/// database must outlive it.
[[nodiscard]] WordList wordsOfTable(SQLite::Database& database);

/// True if some food answers to the word.
[[nodiscard]] bool hasWord(const WordList& words, const AskedWord& asked);

}  // namespace nettare
