#include "core/ledger/followed_in.h"

#include <algorithm>

namespace nettare {

namespace {

bool follows(const SeriesData& series, const SeriesKey& key, const std::vector<std::string>& tags) {
    // The readings of a document's own series stand in the ledger under its name.
    if (!series.bench) {
        // What a ratio is of, such as "edible / bought", only the lines that use it say.
        const std::string& own = series.kind == SeriesKind::Ratio ? key.of : series.of;
        return tags.empty() && sameSeries({series.name, series.kind, own}, key);
    }
    const std::string& of = series.kind == SeriesKind::Ratio ? series.bench->of : series.of;
    return series.bench->tags == tags && sameSeries({series.bench->what, series.kind, of}, key);
}

}  // namespace

std::optional<std::size_t> followedIn(const Dossier& dossier, const SeriesKey& key,
                                      const std::vector<std::string>& tags) {
    const auto found = std::ranges::find_if(
        dossier.series, [&](const SeriesData& series) { return follows(series, key, tags); });
    if (found == dossier.series.end()) return std::nullopt;
    return static_cast<std::size_t>(found - dossier.series.begin());
}

}  // namespace nettare
