#pragma once

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <string>
#include <utility>

#include "core/support/result.h"

namespace nettare {

/// An error that names a file.
[[nodiscard]] inline Error errorIn(const std::string& path, ErrorCode code) {
    Error error{code};
    error.file = path;
    return error;
}

/// Runs work on a table file and turns what SQLite throws into an error: NotATable where the file
/// is no database at all, TableUnreadable otherwise. No exception leaves db.
template <class Work>
[[nodiscard]] auto guarded(const std::string& path, Work&& work) -> decltype(work()) {
    try {
        return std::forward<Work>(work)();
    } catch (const SQLite::Exception& cause) {
        const bool foreign = cause.getErrorCode() == SQLITE_NOTADB;
        const ErrorCode code = foreign ? ErrorCode::NotATable : ErrorCode::TableUnreadable;
        return fail(errorIn(path, code).with("reason", cause.what()));
    }
}

}  // namespace nettare
