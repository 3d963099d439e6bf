#include "db/kitchen/kitchen_errors.h"

namespace nettare {

namespace {

ErrorCode codeOf(int sqliteCode) {
    switch (sqliteCode) {
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
    return errorIn(path, codeOf(cause.getErrorCode())).with("reason", cause.what());
}

Error damaged(const std::string& path, std::string_view what) {
    return errorIn(path, ErrorCode::KitchenDamaged).with("reason", what);
}

}  // namespace nettare
