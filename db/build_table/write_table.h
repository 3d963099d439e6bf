#pragma once

#include <string>

#include "core/support/result.h"
#include "db/build_table/table_text.h"

namespace nettare {

/// Writes a table file under that name, which must be free. The same text gives the same bytes with
/// the same SQLite. Fails: FileNotWritable (value "reason").
[[nodiscard]] Result<void> writeTable(const TableText& text, const std::string& path);

}  // namespace nettare
