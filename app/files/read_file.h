#pragma once

#include <cstddef>
#include <string>

#include "core/support/result.h"

namespace nettare {

/// Largest recipe document that is read, in bytes.
inline constexpr std::size_t kMebibyte = std::size_t{1024} * 1024;
inline constexpr std::size_t kLargestDocument = 4 * kMebibyte;

/// The bytes of a file. Fails: FileNotReadable (missing, a folder, a pipe, no permission),
/// FileTooLarge.
[[nodiscard]] Result<std::string> readFile(const std::string& path,
                                           std::size_t most = kLargestDocument);

}  // namespace nettare
