#include "db/import/import_folder.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>
#include <utility>

#include "db/sqlite_errors.h"

namespace nettare {

namespace {

Error notWritable(const std::string& folder, const std::error_code& cause) {
    return errorIn(folder, ErrorCode::FileNotWritable).with("reason", cause.message());
}

void removePartialFiles(const std::string& folder) {
    std::error_code ignored;
    for (const auto& entry : std::filesystem::directory_iterator{folder, ignored})
        if (entry.path().string().ends_with(".table.partial"))
            std::filesystem::remove(entry.path(), ignored);
}

}  // namespace

Result<ImportFolder> ImportFolder::hold(const std::string& folder) {
    std::error_code made;
    std::filesystem::create_directories(folder, made);
    if (made) return fail(notWritable(folder, made));
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0)
        return fail(notWritable(folder, std::error_code{errno, std::generic_category()}));
    ImportFolder held{descriptor};
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
        return fail(errorIn(folder, ErrorCode::ImportBusy));
    removePartialFiles(folder);
    return held;
}

ImportFolder::ImportFolder(ImportFolder&& other) noexcept
    : descriptor_{std::exchange(other.descriptor_, -1)} {}

ImportFolder& ImportFolder::operator=(ImportFolder&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

ImportFolder::~ImportFolder() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

}  // namespace nettare
