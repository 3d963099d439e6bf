#pragma once

#include <SQLiteCpp/Database.h>

#include "db/import/table_facts.h"
#include "db/import/value_rows.h"

namespace nettare {

/// Writes the staged foods and their words, best first. False where goOn said to stop. Throws
/// SQLite::Exception.
[[nodiscard]] bool writeRankedFoods(SQLite::Database& database, const GroupedFoods& foods,
                                    const ValueRows& values, const TableWriter::GoOn& goOn);

}  // namespace nettare
