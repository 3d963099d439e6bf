#include "db/build_table/build_table.h"

#include <SQLiteCpp/Exception.h>

#include "db/build_table/table_text.h"
#include "db/build_table/whole_file.h"
#include "db/build_table/write_table.h"
#include "db/is_database.h"
#include "db/kitchen/file_header.h"
#include "db/table_format.h"

namespace nettare {

namespace {

bool isTable(const std::string& path) {
    try {
        return readFileHeader(path).applicationId == kTableApplicationId;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

/// A table may be built anew, also one of an older format; nobody's kitchen goes that way.
Result<void> checkTarget(const std::string& path) {
    if (!isDatabase(path) || isTable(path)) return {};
    Error error = Error{ErrorCode::FileNotWritable}.with(
        "reason", "it is a kitchen or other database; choose another name");
    error.file = path;
    return fail(error);
}

}  // namespace

Result<void> buildTable(const std::string& folder, const std::string& path) {
    const auto text = readTableText(folder);
    if (!text) return fail(text.error());
    if (auto free = checkTarget(path); !free) return free;
    WholeFile file{path};
    if (const auto written = writeTable(*text, file.partialPath()); !written)
        return fail(written.error());
    return file.putInPlace();
}

}  // namespace nettare
