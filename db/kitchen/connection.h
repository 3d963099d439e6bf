#pragma once

#include <SQLiteCpp/Database.h>

#include <string>

#include "db/kitchen/place.h"

namespace nettare {

/// What every connection to a kitchen keeps to: foreign keys, and a look at each page before it is
/// believed. Throws SQLite::Exception, as all of these do.
void prepareConnection(SQLite::Database& database);

/// Nothing is written yet.
[[nodiscard]] SQLite::Database connectToWrite(const std::string& file);

/// From here on with a write-ahead log that is synced at every commit.
void keepLog(SQLite::Database& database);

/// Never changes content. Where the place is not writable the file is taken as it is, unless that
/// would hide changes that wait beside it: KitchenUnfinished.
[[nodiscard]] Result<SQLite::Database> connectToRead(const std::string& path,
                                                     const KitchenPlace& place);

}  // namespace nettare
