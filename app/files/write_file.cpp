#include "app/files/write_file.h"

#include <fmt/format.h>

#include <cerrno>
#include <filesystem>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "db/is_database.h"

namespace nettare {

namespace {

namespace fs = std::filesystem;

constexpr mode_t kPermissionsOfNew = 0666;  // less what the user's umask takes away
constexpr mode_t kPermissionBits = 07777;
constexpr int kMostNamesTried = 100;

std::string_view reasonOf(int code) {
    switch (code) {
        case ENOENT:
            return "the folder does not exist";
        case ENOTDIR:
            return "a part of its path is not a folder";
        case EACCES:
        case EPERM:
            return "permission is denied";
        case EROFS:
            return "the disk is read-only";
        case EISDIR:
            return "it is a folder";
        case ENOSPC:
        case EDQUOT:
            return "the disk is full";
        case EFBIG:
            return "the system allows no file as large";
        case ENAMETOOLONG:
            return "its name is too long";
        default:
            return "the system failed to write it";
    }
}

/// A new file beside the target; gone with its owner unless it took the target's name.
class FileBeside {
public:
    FileBeside() = default;
    ~FileBeside() {
        if (descriptor_ >= 0) close(descriptor_);
        if (!name_.empty()) unlink(name_.c_str());
    }
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;

    bool create(const fs::path& folder) {
        for (int i = 0; descriptor_ < 0 && i < kMostNamesTried; ++i) {
            const fs::path name = folder / fmt::format(".nettare-{}-{}.part", getpid(), i);
            descriptor_ =
                open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, kPermissionsOfNew);
            if (descriptor_ >= 0)
                name_ = name.string();
            else if (errno != EEXIST)
                return false;
        }
        return descriptor_ >= 0;
    }

    [[nodiscard]] bool permit(mode_t bits) const { return fchmod(descriptor_, bits) == 0; }

    bool write(std::string_view bytes) {
        while (!bytes.empty()) {
            const ssize_t count = ::write(descriptor_, bytes.data(), bytes.size());
            if (count < 0 && errno != EINTR) return false;
            if (count > 0) bytes.remove_prefix(static_cast<std::size_t>(count));
        }
        return true;
    }

    bool finish() {
        const bool synced = fsync(descriptor_) == 0;
        const int code = errno;
        const bool closed = close(descriptor_) == 0;
        descriptor_ = -1;
        if (!synced) errno = code;
        return synced && closed;
    }

    bool rename(const fs::path& target) {
        if (::rename(name_.c_str(), target.c_str()) != 0) return false;
        name_.clear();
        return true;
    }

private:
    int descriptor_ = -1;
    std::string name_;
};

/// Makes the new name last through a loss of power; the file itself is whole either way.
void syncFolder(const fs::path& folder) {
    const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return;
    fsync(descriptor);
    close(descriptor);
}

tl::unexpected<Error> notWritable(const std::string& path, std::string_view reason) {
    Error error{ErrorCode::FileNotWritable};
    error.file = path;
    return fail(error.with("reason", reason));
}

}  // namespace

Result<void> writeFile(const std::string& path, std::string_view bytes) {
    if (path.empty()) return notWritable(path, "no file is named");
    std::error_code ignored;
    fs::path target = fs::canonical(path, ignored);
    if (target.empty()) target = path;
    struct stat before {};
    const bool exists = stat(target.c_str(), &before) == 0;
    if (exists && S_ISDIR(before.st_mode)) return notWritable(path, reasonOf(EISDIR));
    if (exists && !S_ISREG(before.st_mode)) return notWritable(path, "it is not a plain file");
    if (isDatabase(target)) return notWritable(path, "it is a kitchen or another database");
    if (exists && faccessat(AT_FDCWD, target.c_str(), W_OK, AT_EACCESS) != 0)
        return notWritable(path, reasonOf(errno));
    if (!target.has_filename()) return notWritable(path, reasonOf(ENOENT));

    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path{"."};
    FileBeside file;
    if (!file.create(folder) || (exists && !file.permit(before.st_mode & kPermissionBits)) ||
        !file.write(bytes) || !file.finish() || !file.rename(target))
        return notWritable(path, reasonOf(errno));
    syncFolder(folder);
    return {};
}

}  // namespace nettare
