#include "db/kitchen/stored_entry.h"

#include "core/ledger/scan_entry.h"

namespace nettare {

namespace {

std::optional<ChainedEntry> readWhole(std::string_view text) {
    const auto json = parseJson(text);
    if (!json) return std::nullopt;
    auto entry = readEntry(*json);
    if (!entry) return std::nullopt;
    return std::move(*entry);
}

}  // namespace

std::optional<ChainedEntry> entryFrom(std::string_view text, std::string hash) {
    auto entry = scanEntry(text);
    if (!entry) entry = readWhole(text);
    if (entry) entry->hash = std::move(hash);
    return entry;
}

std::optional<ChainedEntry> canonicalEntry(std::string_view text) {
    if (auto scanned = scanEntry(text)) return scanned;
    auto entry = readWhole(text);
    if (entry && writeJson(entryJson(entry->entry, entry->sequence, entry->previous)) != text)
        return std::nullopt;
    return entry;
}

}  // namespace nettare
