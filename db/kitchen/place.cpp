#include "db/kitchen/place.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <string_view>

#include "db/sqlite_errors.h"

namespace nettare {

namespace {

using std::filesystem::file_type;
using namespace std::string_view_literals;

constexpr std::array kBesideEndings{"-wal"sv, "-shm"sv, "-journal"sv, ".held"sv};

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

/// SQLite would wait for ever at a pipe, and follow or rewrite what else stands there.
Result<void> checkBeside(const std::string& path, const std::string& file) {
    for (const std::string_view ending : kBesideEndings) {
        const std::filesystem::path beside = file + std::string{ending};
        std::error_code failed;
        const file_type type = std::filesystem::symlink_status(beside, failed).type();
        if (type != file_type::not_found && type != file_type::regular)
            return fail(errorIn(path, ErrorCode::KitchenNeighbour)
                            .with("found", beside.filename().string()));
    }
    return {};
}

}  // namespace

FileIdentity fileAt(const std::string& path) {
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0) return {};
    return {found.st_dev, found.st_ino};
}

std::optional<std::string_view> besideEnding(std::string_view path) {
    for (const std::string_view ending : kBesideEndings)
        if (path.ends_with(ending)) return ending;
    return std::nullopt;
}

Result<KitchenPlace> placeOf(const std::string& path) {
    if (const auto kind = checkKind(path); !kind) return fail(kind.error());
    KitchenPlace place;
    std::error_code failed;
    place.file = std::filesystem::canonical(path, failed).string();
    if (failed) return fail(errorIn(path, ErrorCode::KitchenUnreadable));
    if (const auto beside = checkBeside(path, place.file); !beside) return fail(beside.error());
    const std::string folder = std::filesystem::path{place.file}.parent_path().string();
    place.writable = allows(place.file, W_OK) && allows(folder, W_OK | X_OK);
    place.unfinished = hasContent(place.file + "-wal") || hasContent(place.file + "-journal");
    place.shared = std::filesystem::exists(place.file + "-shm", failed);
    if (!hasContent(place.file)) return fail(errorIn(path, ErrorCode::KitchenEmpty));
    return place;
}

}  // namespace nettare
