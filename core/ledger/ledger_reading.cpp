#include "core/ledger/ledger_reading.h"

#include <cmath>
#include <unordered_map>

#include "core/ledger/sayings.h"
#include "core/support/text.h"

namespace nettare {

namespace {

bool isIndication(EntryKind kind) {
    return kind == EntryKind::Shown || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

double gramsOf(Decimal amount, const std::string& unit) {
    const Unit* known = findUnit(unit, MeasureSystem::UsCustomary);
    return known != nullptr ? massOf(amount.value(), *known).grams() : 0;
}

/// Exact where the units are the same, else to twelve digits.
std::optional<Decimal> inUnit(Decimal amount, const std::string& from, const std::string& to) {
    if (from == to) return amount;
    const double step = gramsOf(Decimal{1, 0}, to);
    if (step <= 0) return std::nullopt;
    return Decimal::fromDouble(gramsOf(amount, from) / step);
}

/// The indications of a chain, put together with what is said of them.
class Projection {
public:
    Projection(std::vector<ChainedEntry> entries, const ScaleChecks& checks) : checks_{checks} {
        places_.reserve(entries.size());
        readings_.reserve(entries.size());
        for (ChainedEntry& chained : entries) {
            sayings_.hear(chained.entry);
            if (isIndication(chained.entry.kind)) take(std::move(chained));
        }
    }

    std::vector<LedgerReading> take() {
        for (LedgerReading& reading : readings_) {
            tell(reading);
            subtract(reading);
        }
        for (LedgerReading& reading : readings_) pairUp(reading);
        return std::move(readings_);
    }

private:
    void take(ChainedEntry&& chained) {
        LedgerReading& reading = readings_.emplace_back();
        reading.chained = std::move(chained);
        const LedgerEntry& entry = reading.entry();
        places_.emplace(entry.id, readings_.size() - 1);
        reading.suspect = entry.kind != EntryKind::Checked &&
                          checks_.isSuspect(entry.scale, reading.chained.sequence);
    }

    void tell(LedgerReading& reading) const {
        const Said* said = sayings_.about(reading.entry().id);
        if (said == nullptr) return;
        reading.supersededBy = said->supersededBy;
        reading.successor = said->successor;
        reading.leftOut = said->leftOut;
        reading.asWeighed = said->asWeighed;
        reading.reason = said->reason();
    }

    void subtract(LedgerReading& reading) {
        const LedgerEntry& entry = reading.entry();
        const bool fromJar = !entry.takenFrom.empty();
        const std::string& other = fromJar ? entry.takenFrom : entry.tare;
        if (other.empty() && entry.vesselTare) {
            reading.tare = entry.vesselTare;
            reading.tareReadability = entry.readability;
        }
        if (LedgerReading* shown = find(other)) {
            const Said* said = sayings_.about(other);
            shown->usedAsTare = true;
            reading.tareOverruled = said != nullptr && !said->supersededBy.empty();
            if (reading.tareOverruled) reading.tareReason = said->reason();
            reading.suspect =
                reading.suspect || checks_.isSuspect(shown->entry().scale, shown->chained.sequence);
            if (shown->entry().unit != entry.unit) return;
            reading.tareReadability = shown->entry().readability;
            if (fromJar)
                reading.net = shown->entry().shown.minus(entry.shown);
            else
                reading.tare = shown->entry().shown;
        }
        if (reading.tare) reading.net = entry.shown.minus(*reading.tare);
    }

    void pairUp(LedgerReading& reading) {
        const auto& series = reading.entry().series;
        if (!series) return;
        const LedgerReading* before = find(series->before);
        // A successor comes later in the chain, so that this ends.
        while (before != nullptr && !before->supersededBy.empty()) {
            const LedgerReading* next = find(before->successor);
            const bool later = next != nullptr && next->chained.sequence > before->chained.sequence;
            if (!later) {
                reading.beforeOverruled = true;
                reading.beforeReason = before->reason;
                return;
            }
            before = next;
        }
        if (before == nullptr) return;
        reading.suspect = reading.suspect || before->suspect;
        if (!before->net) return;
        reading.before = inUnit(*before->net, before->entry().unit, reading.entry().unit);
        reading.roundingBeforeGrams = roundingGrams(*before);
    }

    LedgerReading* find(const std::string& id) {
        const auto at = places_.find(id);
        return at != places_.end() ? &readings_[at->second] : nullptr;
    }

    const ScaleChecks& checks_;
    Sayings sayings_;
    std::vector<LedgerReading> readings_;
    std::unordered_map<std::string_view, std::size_t> places_;  ///< by the ids of readings_
};

}  // namespace

std::string foldedWhat(std::string_view what) {
    return lowerAscii(what);
}

bool sameSeries(const SeriesKey& a, const SeriesKey& b) {
    return a.kind == b.kind && a.of == b.of && foldedWhat(a.what) == foldedWhat(b.what);
}

std::optional<SeriesKey> seriesKeyOf(const LedgerEntry& entry) {
    if (entry.kind != EntryKind::Shown || !entry.series || entry.what.empty()) return std::nullopt;
    return SeriesKey{entry.what, entry.series->kind, entry.series->of};
}

std::vector<LedgerReading> readingsOf(std::vector<ChainedEntry> entries,
                                      const ScaleChecks& checks) {
    return Projection{std::move(entries), checks}.take();
}

std::optional<double> netGrams(const LedgerReading& reading) {
    if (!reading.net) return std::nullopt;
    return gramsOf(*reading.net, reading.entry().unit);
}

double roundingGrams(const LedgerReading& reading) {
    const std::string& unit = reading.entry().unit;
    const double own = gramsOf(reading.entry().readability, unit);
    const double tare = reading.tareReadability ? gramsOf(*reading.tareReadability, unit) : 0;
    return std::sqrt((own * own + tare * tare) / 12);
}

}  // namespace nettare
