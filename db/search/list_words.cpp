#include "db/search/list_words.h"

#include <SQLiteCpp/Database.h>

namespace nettare {

void listWords(SQLite::Database& database) {
    database.exec("CREATE VIRTUAL TABLE temp.terms USING fts5vocab(main, food_words, row)");
    database.exec("INSERT INTO word (word, foods) SELECT term, doc FROM temp.terms ORDER BY term");
    database.exec("DROP TABLE temp.terms");
}

}  // namespace nettare
