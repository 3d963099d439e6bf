#pragma once

namespace SQLite {
class Database;
}

namespace nettare {

/// What is left to do once all rows of food_words are written: merges the index into one, and lists
/// its words in `word`. Throws SQLite::Exception.
void finishWords(SQLite::Database& database);

}  // namespace nettare
