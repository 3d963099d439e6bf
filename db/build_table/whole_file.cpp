#include "db/build_table/whole_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>

namespace nettare {

namespace {

std::error_code lastError() {
    return {errno, std::generic_category()};
}

/// Asks the system to bring a file, or the names in a folder, to the disk.
std::error_code sync(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return lastError();
    const std::error_code done = ::fsync(file) == 0 ? std::error_code{} : lastError();
    const std::error_code closed = ::close(file) == 0 ? std::error_code{} : lastError();
    return done ? done : closed;
}

std::string folderOf(const std::string& path) {
    const std::string folder = std::filesystem::path{path}.parent_path().string();
    return folder.empty() ? "." : folder;
}

void removeFile(const std::string& path) {
    std::error_code ignored;
    std::filesystem::remove(path, ignored);
}

}  // namespace

WholeFile::WholeFile(std::string path) : path_{std::move(path)}, partial_{path_ + ".partial"} {
    removeFile(partial_);
}

WholeFile::~WholeFile() {
    if (!inPlace_) removeFile(partial_);
}

Result<void> WholeFile::putInPlace() {
    std::error_code failed = sync(partial_);
    if (!failed) std::filesystem::rename(partial_, path_, failed);
    if (failed) {
        Error error = Error{ErrorCode::FileNotWritable}.with("reason", failed.message());
        error.file = path_;
        return fail(error);
    }
    inPlace_ = true;
    // The content is safe; a folder that cannot be synced may at worst bring the old name back.
    static_cast<void>(sync(folderOf(path_)));
    return {};
}

}  // namespace nettare
