#pragma once

#include <string>

namespace nettare {

/// What the first bytes of a database file say (SQLite file format, section 1.3).
struct FileHeader {
    bool isDatabase = false;  ///< false for any other file; the rest is 0 then
    int applicationId = 0;
    int userVersion = 0;
};

/// Reads them through SQLite's own files, so that no lock of another window of this process is
/// lost, and without a look at pages, which may lie in a log beside the file. Throws
/// SQLite::Exception where the file cannot be opened or read.
[[nodiscard]] FileHeader readFileHeader(const std::string& path);

}  // namespace nettare
