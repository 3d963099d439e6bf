#include "app/files/share_folder.h"

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace nettare {

std::string shareFolder() {
    if (const char* set = std::getenv("NETTARE_SHARE")) return set;
    std::error_code failure;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", failure);
    return (program.parent_path().parent_path() / NETTARE_SHARE_FOLDER).string();
}

}  // namespace nettare
