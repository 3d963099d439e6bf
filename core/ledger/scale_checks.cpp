#include "core/ledger/scale_checks.h"

#include <algorithm>

#include "core/ledger/bench_equipment.h"

namespace nettare {

std::unordered_set<std::string_view> overruledIds(const std::vector<ChainedEntry>& entries) {
    std::unordered_set<std::string_view> ids;
    for (const ChainedEntry& chained : entries)
        if (chained.entry.kind == EntryKind::Superseded) ids.insert(chained.entry.refersTo);
    return ids;
}

ScaleChecks::ScaleChecks(const std::vector<ChainedEntry>& entries) {
    const auto overruled = overruledIds(entries);
    for (const auto& [entry, sequence, previous, hash] : entries)
        if (entry.kind == EntryKind::Checked && !overruled.contains(entry.id))
            byScale_[entry.scale].push_back(
                {sequence, isGoodCheck(entry.mass, entry.shown, entry.readability)});
}

bool ScaleChecks::isSuspect(const std::string& scale, long long sequence) const {
    const auto known = byScale_.find(scale);
    if (known == byScale_.end()) return false;
    const auto& checks = known->second;
    const auto after = std::ranges::upper_bound(checks, sequence, {}, &Outcome::sequence);
    if (after != checks.end() && !after->good) return true;
    return after != checks.begin() && !std::prev(after)->good;
}

}  // namespace nettare
