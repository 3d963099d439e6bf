#pragma once

namespace SQLite {
class Database;
}

namespace nettare {

/// Lists the words of food_words in `word`, once all rows are written. Throws SQLite::Exception.
void listWords(SQLite::Database& database);

}  // namespace nettare
