#include "db/is_database.h"

#include <SQLiteCpp/Exception.h>

#include <array>
#include <filesystem>
#include <string_view>

#include "db/kitchen/file_header.h"

namespace nettare {

namespace {

namespace fs = std::filesystem;

bool holdsDatabase(const fs::path& file) {
    std::error_code failed;
    if (!fs::is_regular_file(file, failed)) return false;
    if (file.extension() == ".nettare") return true;
    try {
        return readFileHeader(file.string()).isDatabase;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

}  // namespace

bool isDatabase(const std::string& path) {
    constexpr std::array<std::string_view, 4> kBeside{"-wal", "-shm", "-journal", ".held"};
    std::error_code failed;
    const fs::path file = fs::weakly_canonical(path, failed);
    if (failed || file.empty()) return false;
    if (holdsDatabase(file)) return true;
    const std::string name = file.string();
    for (const std::string_view ending : kBeside)
        if (name.ends_with(ending) && holdsDatabase(name.substr(0, name.size() - ending.size())))
            return true;
    return false;
}

}  // namespace nettare
