#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger_reading.h"
#include "core/recipe/dossier.h"

namespace nettare {

/// The index of the dossier's series that follows the ledger's series of that key and exactly those
/// tags (sorted), or of its own series that is called so; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> followedIn(const Dossier& dossier, const SeriesKey& key,
                                                    const std::vector<std::string>& tags);

}  // namespace nettare
