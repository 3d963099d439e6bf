#include "core/ledger/followed_in.h"

#include <algorithm>

namespace nettare {

std::optional<std::size_t> followedIn(const Dossier& dossier, const SeriesKey& key,
                                      const std::vector<std::string>& tags) {
    const auto found = std::ranges::find_if(dossier.series, [&](const SeriesData& series) {
        if (!series.bench || series.bench->tags != tags) return false;
        const std::string& of = series.kind == SeriesKind::Ratio ? series.bench->of : series.of;
        return sameSeries({series.bench->what, series.kind, of}, key);
    });
    if (found == dossier.series.end()) return std::nullopt;
    return static_cast<std::size_t>(found - dossier.series.begin());
}

}  // namespace nettare
