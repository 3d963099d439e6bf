#pragma once

#include <vector>

#include "db/search/found_row.h"

namespace SQLite {
class Database;
}

namespace nettare {

/// Rows taken from the index, best first, before they are ranked in memory.
inline constexpr int kMostCandidates = 300;

/// The first kMostCandidates rows that answer to all words, in row order, with what each is ranked
/// by. Throws SQLite::Exception.
[[nodiscard]] std::vector<FoundRow> rankRows(SQLite::Database& database,
                                             const std::vector<AskedWord>& asked);

}  // namespace nettare
