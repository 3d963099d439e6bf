#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace nettare {

/// Text in Windows-1252 as UTF-8; nothing where it holds one of the five bytes that mean nothing
/// there (0x81, 0x8D, 0x8F, 0x90, 0x9D).
[[nodiscard]] std::optional<std::string> utf8FromWindows1252(std::string_view text);

}  // namespace nettare
