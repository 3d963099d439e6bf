#include "db/kitchen/stored_entry.h"

namespace nettare {

std::optional<ChainedEntry> entryFrom(std::string_view text, std::string hash) {
    const auto json = parseJson(text);
    if (!json) return std::nullopt;
    auto entry = readEntry(*json);
    if (!entry) return std::nullopt;
    entry->hash = std::move(hash);
    return std::move(*entry);
}

}  // namespace nettare
