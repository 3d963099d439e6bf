#include "core/ledger/bench_equipment.h"

#include <algorithm>
#include <functional>
#include <map>
#include <unordered_map>

#include "core/ledger/scale_checks.h"

namespace nettare {

namespace {

struct ScaleInUse {
    KnownScale scale;
    bool declared = false;  ///< by an entry of its own, which is believed before others
    long long lastUsed = 0;
};

void tellScale(const ChainedEntry& chained, ScaleInUse& use) {
    const LedgerEntry& entry = chained.entry;
    use.lastUsed = chained.sequence;
    KnownScale& scale = use.scale;
    const bool declares = entry.kind == EntryKind::Scale;
    if (declares) scale.capacity = entry.capacity;
    if (declares || !use.declared) {
        scale.name = entry.scale;
        scale.unit = entry.unit;
        scale.readability = entry.readability;
    }
    use.declared = use.declared || declares;
    if (entry.kind == EntryKind::Checked)
        scale.lastCheck = {entry.at,   chained.sequence,
                           entry.mass, entry.shown,
                           entry.unit, isGoodCheck(entry.mass, entry.shown, entry.readability)};
}

KnownVessel vesselOf(const LedgerEntry& entry) {
    return {entry.vessel,      entry.scale, entry.unit, entry.shown,
            entry.readability, entry.at,    entry.id};
}

}  // namespace

BenchEquipment equipmentOf(const std::vector<ChainedEntry>& entries) {
    const auto overruled = overruledIds(entries);
    std::unordered_map<std::string, ScaleInUse> scales;
    std::map<std::string, KnownVessel> vessels;
    for (const ChainedEntry& chained : entries) {
        const LedgerEntry& entry = chained.entry;
        if (entry.scale.empty() || overruled.contains(entry.id)) continue;
        tellScale(chained, scales[entry.scale]);
        if (entry.kind == EntryKind::Vessel) vessels[entry.vessel] = vesselOf(entry);
    }
    std::vector<const ScaleInUse*> byUse;
    byUse.reserve(scales.size());
    for (const auto& [name, use] : scales) byUse.push_back(&use);
    std::ranges::sort(byUse, std::greater{}, &ScaleInUse::lastUsed);

    BenchEquipment equipment;
    equipment.scales.reserve(byUse.size());
    for (const ScaleInUse* use : byUse) equipment.scales.push_back(use->scale);
    equipment.vessels.reserve(vessels.size());
    for (const auto& [name, vessel] : vessels) equipment.vessels.push_back(vessel);
    return equipment;
}

std::string vesselEntryOf(const std::vector<ChainedEntry>& entries, const LedgerEntry& weighed) {
    const auto overruled = overruledIds(entries);
    std::string found;
    for (const ChainedEntry& chained : entries) {
        const LedgerEntry& entry = chained.entry;
        const bool same = entry.kind == EntryKind::Vessel && entry.vessel == weighed.vessel &&
                          entry.shown == weighed.shown && entry.scale == weighed.scale &&
                          entry.unit == weighed.unit && entry.readability == weighed.readability;
        if (same && !overruled.contains(entry.id)) found = entry.id;
    }
    return found;
}

bool isGoodCheck(Decimal mass, Decimal shown, Decimal readability) {
    const Decimal wrong = shown < mass ? mass.minus(shown) : shown.minus(mass);
    const int steps = mass <= readability.times(500) ? 1 : mass <= readability.times(2000) ? 2 : 3;
    return wrong <= readability.times(steps);
}

bool isSuspect(const std::vector<ChainedEntry>& checks, const std::string& scale,
               long long sequence) {
    return ScaleChecks{checks}.isSuspect(scale, sequence);
}

}  // namespace nettare
