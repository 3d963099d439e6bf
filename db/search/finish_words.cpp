#include "db/search/finish_words.h"

#include <SQLiteCpp/Database.h>

namespace nettare {

void finishWords(SQLite::Database& database) {
    database.exec("INSERT INTO food_words (food_words) VALUES ('optimize')");
    database.exec("CREATE VIRTUAL TABLE temp.terms USING fts5vocab(main, food_words, row)");
    database.exec("INSERT INTO word (word, foods) SELECT term, doc FROM temp.terms ORDER BY term");
    database.exec("DROP TABLE temp.terms");
}

}  // namespace nettare
