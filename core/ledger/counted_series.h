#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/ledger/ledger_reading.h"
#include "core/weighing/series.h"

namespace nettare {

/// The readings of a yield series that count, as its statistics take them, oldest first.
struct CountedSeries {
    std::vector<std::size_t> places;    ///< of each, among the readings it was made of
    std::vector<SeriesReading> pieces;  ///< of pieces and measures; empty of ratios
    std::vector<RatioReading> ratios;   ///< of ratios; empty of others
};

/// Of `readings`, those of the key (as sameSeries() has it) that bear all of the tags, neither
/// superseded nor left out, with a known net; of ratios, those whose net before is known.
[[nodiscard]] CountedSeries countedSeries(const std::vector<LedgerReading>& readings,
                                          const SeriesKey& key,
                                          const std::vector<std::string>& tags);

/// Whether a reading bears all of the tags.
[[nodiscard]] bool bearsTags(const LedgerReading& reading, const std::vector<std::string>& tags);

}  // namespace nettare
