#include "db/kitchen/kitchen_errors.h"

namespace nettare {

namespace {

/// Some answers of SQLite carry their details in the upper bits.
ErrorCode codeOf(const SQLite::Exception& cause) {
    if (cause.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE) return ErrorCode::KitchenDiskFull;
    switch (cause.getErrorCode() & 0xff) {
        case SQLITE_NOTADB:
            return ErrorCode::NotAKitchen;
        case SQLITE_FULL:
            return ErrorCode::KitchenDiskFull;
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return ErrorCode::KitchenBusy;
        case SQLITE_READONLY:
            return ErrorCode::KitchenNotWritable;
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return ErrorCode::KitchenUnreadable;
        case SQLITE_IOERR:
            return ErrorCode::KitchenDiskFault;
        default:
            return ErrorCode::KitchenDamaged;
    }
}

}  // namespace

Error kitchenError(const std::string& path, const SQLite::Exception& cause) {
    return errorIn(path, codeOf(cause)).with("reason", cause.what());
}

Error damaged(const std::string& path, std::string_view what) {
    return errorIn(path, ErrorCode::KitchenDamaged).with("reason", what);
}

}  // namespace nettare
