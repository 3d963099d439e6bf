#include "core/publish/pool_text.h"

#include <fmt/core.h>

#include <algorithm>

namespace nettare {

std::string poolText(const SeriesData& series) {
    const bool one = std::max(series.readings.size(), series.pairs.size()) == 1;
    if (series.earlier)
        return fmt::format(" {} {}", one ? "taken from" : "pooled with that of",
                           series.earlier->name);
    return series.pooled && !one ? " pooled with the usual one" : "";
}

std::string ratioName(const SeriesData& series) {
    const std::string pool = poolText(series);
    return pool.empty() ? series.name : fmt::format("{}, its spread{}", series.name, pool);
}

}  // namespace nettare
