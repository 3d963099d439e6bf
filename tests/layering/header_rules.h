#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace nettare {

/// One sentence for each header of core, db and app below `root` that does not begin with
/// #pragma once, and for each source there that has a header of its own name and does not include
/// it before all else. What this finds, no compiler would: a header that its own source includes
/// first is compiled on its own, so only headers without a source need a source written for them.
[[nodiscard]] std::vector<std::string> headersNotAlone(const std::filesystem::path& root);

}  // namespace nettare
