#include "db/kitchen/connection.h"

#include <string>

#include "db/kitchen/kitchen_errors.h"
#include "db/open_read_only.h"

namespace nettare {

namespace {

/// How long another program, such as a reader that tidies up, is waited for.
constexpr int kPatienceMs = 2000;
/// A series of ten thousand readings and their tares lies on almost as many pages of a ledger of a
/// million, some 75 MB; a second look should not read them again. Memory is taken as it is needed.
constexpr int kCacheKiB = 98'304;

void lookInside(SQLite::Database& database) {
    static_cast<void>(database.execAndGet("SELECT count(*) FROM sqlite_schema"));
}

/// A writer's log can be read beside it as long as its index is there.
Result<SQLite::Database> besideAWriter(const std::string& path, const KitchenPlace& place) {
    try {
        SQLite::Database database{place.file, SQLite::OPEN_READONLY, kPatienceMs};
        lookInside(database);
        return database;
    } catch (const SQLite::Exception&) {
        if (place.unfinished) return fail(errorIn(path, ErrorCode::KitchenUnfinished));
        return openReadOnly(place.file);
    }
}

}  // namespace

void prepareConnection(SQLite::Database& database) {
    database.exec("PRAGMA foreign_keys = ON; PRAGMA cell_size_check = ON; PRAGMA cache_size = -" +
                  std::to_string(kCacheKiB));
}

SQLite::Database connectToWrite(const std::string& file) {
    SQLite::Database database{file, SQLite::OPEN_READWRITE, kPatienceMs};
    prepareConnection(database);
    return database;
}

void keepLog(SQLite::Database& database) {
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
}

Result<SQLite::Database> connectToRead(const std::string& path, const KitchenPlace& place) {
    // A connection that may write takes its log along when it is the last to leave.
    if (place.writable) {
        SQLite::Database database{place.file, SQLite::OPEN_READWRITE, kPatienceMs};
        prepareConnection(database);
        database.exec("PRAGMA query_only = ON");
        lookInside(database);
        return database;
    }
    if (place.shared || place.unfinished) return besideAWriter(path, place);
    return openReadOnly(place.file);
}

}  // namespace nettare
