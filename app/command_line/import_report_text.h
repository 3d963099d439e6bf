#pragma once

#include <string>

#include "db/import/import_table.h"

namespace nettare {

/// What an import did, or with `dryRun` would have done, for people to read.
[[nodiscard]] std::string importReportText(const ImportReport& report, bool dryRun);

}  // namespace nettare
