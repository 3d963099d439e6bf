#pragma once

#include "core/support/result.h"

#include <string>
#include <string_view>

namespace nettare {

/// Writes a file all or nothing: into a new file beside it, every write checked and synced to the
/// disk, which then takes its name. What stood there before stays whole until that moment; it lends
/// its permissions, and a link to it stays a link. Never takes the place of a database.
/// Fails: FileNotWritable with the file as the caller gave it and a "reason", a clause such as "the
/// folder does not exist", "permission is denied", "it is a folder" or "the disk is full". Nothing
/// is left behind then.
[[nodiscard]] Result<void> writeFile(const std::string& path, std::string_view bytes);

}  // namespace nettare
