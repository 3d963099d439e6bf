#pragma once

#include <string>
#include <string_view>

#include "core/support/json.h"

namespace nettare {

/// The value of a JSON text that must be good.
[[nodiscard]] Json jsonOf(std::string_view text);

/// The bytes of a file, which must be there.
[[nodiscard]] std::string fileText(const std::string& path);

/// The value at a JSON pointer without escapes, which must be there.
[[nodiscard]] Json& partAt(Json& document, std::string_view pointer);

/// The document with another value at the pointer; the last step may be a new key, or "-" for a
/// new item of a list (RFC 6902 uses it so).
[[nodiscard]] Json with(Json document, std::string_view pointer, Json value);

/// The document without the member or item at the pointer.
[[nodiscard]] Json without(Json document, std::string_view pointer);

}  // namespace nettare
