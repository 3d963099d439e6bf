#include "db/kitchen/place.h"

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>

#include "db/sqlite_errors.h"

namespace nettare {

namespace {

using std::filesystem::file_type;

/// By the effective user, and false on a read-only file system.
bool allows(const std::string& path, int mode) {
    return ::faccessat(AT_FDCWD, path.c_str(), mode, AT_EACCESS) == 0;
}

bool hasContent(const std::string& path) {
    std::error_code missing;
    const auto size = std::filesystem::file_size(path, missing);
    return !missing && size > 0;
}

Result<void> checkKind(const std::string& path) {
    std::error_code failed;
    const auto status = std::filesystem::status(path, failed);
    if (status.type() == file_type::not_found)
        return fail(errorIn(path, ErrorCode::KitchenMissing));
    if (status.type() == file_type::none) return fail(errorIn(path, ErrorCode::KitchenUnreadable));
    if (status.type() == file_type::directory)
        return fail(errorIn(path, ErrorCode::KitchenIsFolder));
    if (status.type() != file_type::regular) return fail(errorIn(path, ErrorCode::NotAKitchen));
    if (!allows(path, R_OK)) return fail(errorIn(path, ErrorCode::KitchenUnreadable));
    return {};
}

}  // namespace

Result<KitchenPlace> placeOf(const std::string& path) {
    if (const auto kind = checkKind(path); !kind) return fail(kind.error());
    KitchenPlace place;
    std::error_code failed;
    place.file = std::filesystem::canonical(path, failed).string();
    if (failed) return fail(errorIn(path, ErrorCode::KitchenUnreadable));
    const std::string folder = std::filesystem::path{place.file}.parent_path().string();
    place.writable = allows(place.file, W_OK) && allows(folder, W_OK | X_OK);
    place.unfinished = hasContent(place.file + "-wal") || hasContent(place.file + "-journal");
    place.shared = std::filesystem::exists(place.file + "-shm", failed);
    if (!hasContent(place.file)) return fail(errorIn(path, ErrorCode::KitchenEmpty));
    return place;
}

}  // namespace nettare
