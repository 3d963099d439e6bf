#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// An entry from its text as the ledger stores it, with its hash; nothing where it is none.
[[nodiscard]] std::optional<ChainedEntry> entryFrom(std::string_view text, std::string hash);

/// The same without its hash, and nothing where the text is not the canonical one.
[[nodiscard]] std::optional<ChainedEntry> canonicalEntry(std::string_view text);

}  // namespace nettare
