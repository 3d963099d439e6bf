#pragma once

#include <string>

#include "core/support/result.h"

namespace nettare {

/// Makes the table file `path` from a folder in the text form of resources/starter. All or nothing:
/// if anything is wrong there is no new file, and an older one of the name stays. Fails: as
/// readTableText, with file and line of the text; FileNotWritable, also where a kitchen or a
/// database that is no table stands there.
[[nodiscard]] Result<void> buildTable(const std::string& folder, const std::string& path);

}  // namespace nettare
