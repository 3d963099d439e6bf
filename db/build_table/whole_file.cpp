#include "db/build_table/whole_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>
#include <system_error>

namespace nettare {

namespace {

/// Asks the system to bring a file, or the names in a folder, to the disk.
bool synced(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return false;
    const bool done = ::fsync(file) == 0;
    return ::close(file) == 0 && done;
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
    std::error_code renamed;
    const bool written = synced(partial_);
    if (written) std::filesystem::rename(partial_, path_, renamed);
    if (!written || renamed) {
        Error error{ErrorCode::FileNotWritable};
        error.file = path_;
        return fail(error);
    }
    inPlace_ = true;
    // The content is safe; a folder that cannot be synced may at worst bring the old name back.
    static_cast<void>(synced(folderOf(path_)));
    return {};
}

}  // namespace nettare
