#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger_reading.h"
#include "core/recipe/dossier.h"

namespace nettare {

/// The index of the dossier's series that follows the ledger's series of that key and exactly those
/// tags (sorted); nothing where none does.
[[nodiscard]] std::optional<std::size_t> followedIn(const Dossier& dossier, const SeriesKey& key,
                                                    const std::vector<std::string>& tags);

}  // namespace nettare
