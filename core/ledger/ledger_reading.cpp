#include "core/ledger/ledger_reading.h"

#include <cmath>
#include <unordered_map>

#include "core/ledger/scale_checks.h"
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

/// Goes through a chain once for the indications, once for what is said of them.
class Projection {
public:
    Projection(const std::vector<ChainedEntry>& entries, const ScaleChecks& checks)
        : checks_{checks} {
        places_.reserve(entries.size());
        for (const ChainedEntry& chained : entries)
            if (isIndication(chained.entry.kind)) take(chained);
        for (const ChainedEntry& chained : entries) hear(chained.entry);
    }

    std::vector<LedgerReading> take() {
        for (LedgerReading& reading : readings_) subtract(reading);
        for (std::size_t i = 0; i < readings_.size(); ++i) {
            LedgerReading& reading = readings_[i];
            pairUp(reading);
            reading.leftOut = said_[i].leftOut;
            reading.reason = reading.supersededBy.empty() ? said_[i].cause : said_[i].reason;
        }
        return std::move(readings_);
    }

private:
    struct Said {
        std::string reason;  ///< why superseded
        std::string cause;   ///< why left out
        bool leftOut = false;
    };

    void take(const ChainedEntry& chained) {
        places_.emplace(chained.entry.id, readings_.size());
        LedgerReading& reading = readings_.emplace_back();
        reading.chained = chained;
        reading.suspect = chained.entry.kind != EntryKind::Checked &&
                          checks_.isSuspect(chained.entry.scale, chained.sequence);
        said_.emplace_back();
    }

    void hear(const LedgerEntry& entry) {
        if (entry.refersTo.empty()) return;
        switch (entry.kind) {
            case EntryKind::Superseded:
            case EntryKind::Shown:
                return overrule(entry);
            case EntryKind::LeftOut:
                if (const auto place = placeOf(entry.refersTo)) {
                    said_[*place].leftOut = true;
                    said_[*place].cause = entry.reason;
                    spokenOf_.emplace(entry.id, *place);
                }
                return;
            case EntryKind::TakenIn:
                if (const auto place = meantBy(entry.refersTo)) {
                    said_[*place].leftOut = false;
                    said_[*place].cause.clear();
                }
                return;
            case EntryKind::Reasoned:
                return giveReason(entry);
            default:
                return;
        }
    }

    void overrule(const LedgerEntry& entry) {
        const auto place = placeOf(entry.refersTo);
        if (!place) return;
        LedgerReading& reading = readings_[*place];
        const bool corrects = entry.kind == EntryKind::Shown;
        if (corrects && reading.successor.empty()) reading.successor = entry.id;
        spokenOf_.emplace(entry.id, *place);
        if (!reading.supersededBy.empty()) return;
        reading.supersededBy = entry.id;
        said_[*place].reason = entry.reason;
    }

    /// A correction speaks of two readings: of itself where it was taken back or left out, else of
    /// the one that it corrects.
    void giveReason(const LedgerEntry& entry) {
        auto place = placeOf(entry.refersTo);
        if (!place || !isSpokenOf(*place)) place = spokenOfBy(entry.refersTo);
        if (!place) return;
        const bool overruled = !readings_[*place].supersededBy.empty();
        if (overruled)
            said_[*place].reason = entry.reason;
        else if (said_[*place].leftOut)
            said_[*place].cause = entry.reason;
    }

    bool isSpokenOf(std::size_t place) const {
        return !readings_[place].supersededBy.empty() || said_[place].leftOut;
    }

    void subtract(LedgerReading& reading) {
        const LedgerEntry& entry = reading.entry();
        const bool fromJar = !entry.takenFrom.empty();
        const std::string& other = fromJar ? entry.takenFrom : entry.tare;
        if (other.empty() && entry.vesselTare) {
            reading.tare = entry.vesselTare;
            reading.tareReadability = entry.readability;
        }
        if (const auto place = other.empty() ? std::nullopt : placeOf(other)) {
            LedgerReading& shown = readings_[*place];
            shown.usedAsTare = true;
            reading.tareOverruled = !shown.supersededBy.empty();
            reading.suspect =
                reading.suspect || checks_.isSuspect(shown.entry().scale, shown.chained.sequence);
            if (shown.entry().unit != entry.unit) return;
            reading.tareReadability = shown.entry().readability;
            if (fromJar)
                reading.net = shown.entry().shown.minus(entry.shown);
            else
                reading.tare = shown.entry().shown;
        }
        if (reading.tare) reading.net = entry.shown.minus(*reading.tare);
    }

    void pairUp(LedgerReading& reading) {
        const auto& series = reading.entry().series;
        if (!series || series->before.empty()) return;
        auto place = placeOf(series->before);
        // A chain has no circles: a successor comes after what it corrects.
        while (place && !readings_[*place].supersededBy.empty()) {
            const auto next = placeOf(readings_[*place].successor);
            place = next && *next > *place ? next : std::nullopt;
        }
        if (!place || !readings_[*place].net) return;
        const LedgerReading& before = readings_[*place];
        reading.before = inUnit(*before.net, before.entry().unit, reading.entry().unit);
    }

    std::optional<std::size_t> placeOf(const std::string& id) const { return found(places_, id); }
    std::optional<std::size_t> spokenOfBy(const std::string& id) const {
        return found(spokenOf_, id);
    }
    std::optional<std::size_t> meantBy(const std::string& id) const {
        const auto place = placeOf(id);
        return place ? place : spokenOfBy(id);
    }

    using Places = std::unordered_map<std::string_view, std::size_t>;
    static std::optional<std::size_t> found(const Places& places, const std::string& id) {
        const auto at = places.find(id);
        return at != places.end() ? std::optional{at->second} : std::nullopt;
    }

    const ScaleChecks& checks_;
    std::vector<LedgerReading> readings_;
    std::vector<Said> said_;  ///< of each reading
    Places places_;           ///< of indications, by their ids
    Places spokenOf_;         ///< of what they speak of, by the ids of the others
};

}  // namespace

std::string foldedWhat(std::string_view what) {
    std::string folded;
    folded.reserve(what.size());
    for (const std::string_view word : words(what)) {
        if (!folded.empty()) folded += ' ';
        folded += lowerAscii(word);
    }
    return folded;
}

bool sameSeries(const SeriesKey& a, const SeriesKey& b) {
    return a.kind == b.kind && a.of == b.of && foldedWhat(a.what) == foldedWhat(b.what);
}

std::optional<SeriesKey> seriesKeyOf(const LedgerEntry& entry) {
    if (entry.kind != EntryKind::Shown || !entry.series || entry.what.empty()) return std::nullopt;
    return SeriesKey{entry.what, entry.series->kind, entry.series->of};
}

std::vector<LedgerReading> readingsOf(const std::vector<ChainedEntry>& entries,
                                      const std::vector<ChainedEntry>& checks) {
    const ScaleChecks known{checks};
    return Projection{entries, known}.take();
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
