#include "db/kitchen/copy_database.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include "db/kitchen/kitchen_errors.h"
#include "db/kitchen/place.h"

namespace nettare {

namespace {

void syncFolderOf(const std::string& path) {
    const std::string folder = std::filesystem::path{path}.parent_path().string();
    const int descriptor = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return;
    ::fsync(descriptor);
    ::close(descriptor);
}

/// False with errno where it fails; some file systems cannot refuse to replace by themselves.
bool renamedWithoutReplacing(const std::string& from, const std::string& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return true;
    if (errno != EINVAL && errno != ENOSYS) return false;
    if (::access(to.c_str(), F_OK) == 0) {
        errno = EEXIST;
        return false;
    }
    return std::rename(from.c_str(), to.c_str()) == 0;
}

bool exists(const std::string& path) {
    std::error_code ignored;
    return std::filesystem::exists(std::filesystem::symlink_status(path, ignored));
}

/// The copy is synced page by page by its own SQLite, before it is closed.
void copyTo(SQLite::Database& source, const std::string& partial) {
    SQLite::Database copy{partial, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    copyContent(source, copy);
}

/// Whether it was the copy that could not be written.
bool isOfTheCopy(int sqliteCode) {
    const int kind = sqliteCode & 0xff;
    return kind == SQLITE_FULL || (kind == SQLITE_IOERR && sqliteCode != SQLITE_IOERR_READ &&
                                   sqliteCode != SQLITE_IOERR_SHORT_READ);
}

}  // namespace

Result<void> checkNewName(const std::string& path) {
    if (const auto ending = besideEnding(path))
        return fail(errorIn(path, ErrorCode::KitchenNameTaken).with("found", *ending));
    if (exists(path)) return fail(errorIn(path, ErrorCode::KitchenExists));
    // SQLite would take an orphan's pages into the new file.
    for (const char* ending : {"-wal", "-journal"})
        if (const std::filesystem::path orphan = path + ending; exists(orphan.string()))
            return fail(errorIn(path, ErrorCode::KitchenNeighbour)
                            .with("found", orphan.filename().string()));
    return {};
}

void copyContent(SQLite::Database& source, SQLite::Database& copy) {
    SQLite::Backup backup{copy, source};
    // Busy is the one answer that is no exception.
    if (const int answer = backup.executeStep(-1); answer != SQLITE_DONE)
        throw SQLite::Exception{"the copy was kept waiting", answer};
}

std::string partialName(const std::string& path) {
    return path + ".partial-" + std::to_string(::getpid());
}

void removeDatabase(const std::string& path) {
    for (const char* ending : {"", "-journal", "-wal", "-shm"}) ::unlink((path + ending).c_str());
}

Result<void> putInPlace(const std::string& partial, const std::string& path) {
    if (!renamedWithoutReplacing(partial, path)) {
        const ErrorCode code =
            errno == EEXIST ? ErrorCode::KitchenExists : ErrorCode::KitchenNotWritable;
        removeDatabase(partial);
        return fail(errorIn(path, code));
    }
    syncFolderOf(path);
    return {};
}

Result<void> copyDatabase(SQLite::Database& source, const std::string& path) {
    if (auto free = checkNewName(path); !free) return free;
    const std::string partial = partialName(path);
    removeDatabase(partial);
    try {
        copyTo(source, partial);
    } catch (const SQLite::Exception& cause) {
        removeDatabase(partial);
        if (cause.getErrorCode() == SQLITE_CANTOPEN)
            return fail(errorIn(path, ErrorCode::KitchenNotWritable));
        if (isOfTheCopy(cause.getErrorCode())) return fail(kitchenError(path, cause));
        throw;
    }
    return putInPlace(partial, path);
}

}  // namespace nettare
