#pragma once

#include <QString>

#include "db/import/import_table.h"

namespace nettare {

/// What an import did or would do, in a few lines.
[[nodiscard]] QString reportText(const ImportReport& report, bool dryRun);

/// How far an import is: "reading NUT_DATA.txt".
[[nodiscard]] QString stepText(const ImportProgress& progress);

}  // namespace nettare
