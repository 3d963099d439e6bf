#pragma once

#include "db/import/import_table.h"

namespace nettare {

// One function per kind of files; each is importTable() for its kind.

[[nodiscard]] Result<ImportReport> importSr28(const ImportRequest& request, const TellImport& tell);
[[nodiscard]] Result<ImportReport> importFdc(const ImportRequest& request, const TellImport& tell);
[[nodiscard]] Result<ImportReport> importCsv(const ImportRequest& request, const TellImport& tell);

}  // namespace nettare
