#include "db/build_table/build_table.h"

#include "db/build_table/table_text.h"
#include "db/build_table/whole_file.h"
#include "db/build_table/write_table.h"

namespace nettare {

Result<void> buildTable(const std::string& folder, const std::string& path) {
    const auto text = readTableText(folder);
    if (!text) return fail(text.error());
    WholeFile file{path};
    if (const auto written = writeTable(*text, file.partialPath()); !written)
        return fail(written.error());
    return file.putInPlace();
}

}  // namespace nettare
