#include "db/import/import_table.h"

#include "db/import/import_parts.h"

namespace nettare {

Result<ImportReport> importTable(const ImportRequest& request, const TellImport& tell) {
    switch (request.kind) {
        case ImportKind::Sr28:
            return importSr28(request, tell);
        case ImportKind::Fdc:
            return importFdc(request, tell);
        case ImportKind::Csv:
            return importCsv(request, tell);
    }
    return fail(ErrorCode::FileNotReadable);
}

}  // namespace nettare
