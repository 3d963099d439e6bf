#pragma once

#include <tl/expected.hpp>

#include "core/support/error.h"

namespace nettare {

/// A value, or the error that says why there is none. For what can happen to a good program.
template <class T>
using Result = tl::expected<T, Error>;

/// What a failing function returns; it turns into a Result of any type.
[[nodiscard]] inline tl::unexpected<Error> fail(Error error) {
    return tl::unexpected<Error>{std::move(error)};
}
[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code) {
    return fail(Error{code});
}

}  // namespace nettare
