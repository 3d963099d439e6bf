#pragma once

#include <SQLiteCpp/Exception.h>

#include <string>
#include <utility>

#include "core/support/result.h"
#include "db/sqlite_errors.h"

namespace nettare {

/// What SQLite's complaint means for a kitchen; the change that it stopped was rolled back.
[[nodiscard]] Error kitchenError(const std::string& path, const SQLite::Exception& cause);

/// A kitchen holds something that it cannot have written itself. `what` names it.
[[nodiscard]] Error damaged(const std::string& path, std::string_view what);

/// Runs work on a kitchen and turns what SQLite throws into an error. No exception leaves db.
template <class Work>
[[nodiscard]] auto inKitchen(const std::string& path, Work&& work) -> decltype(work()) {
    try {
        return std::forward<Work>(work)();
    } catch (const SQLite::Exception& cause) {
        return fail(kitchenError(path, cause));
    }
}

}  // namespace nettare
