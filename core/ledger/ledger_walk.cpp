#include "core/ledger/ledger_walk.h"

#include <algorithm>
#include <charconv>
#include <iterator>

namespace nettare {

namespace {

bool showsMass(EntryKind kind) {
    return kind == EntryKind::Shown || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

}  // namespace

// Hexadecimal digits and dashes alone, as readEntry() has seen to.
LedgerWalk::Uuid LedgerWalk::uuidOf(std::string_view id) {
    std::string digits;
    std::ranges::copy_if(id, std::back_inserter(digits), [](char c) { return c != '-'; });
    digits.resize(32, '0');
    Uuid uuid;
    std::from_chars(digits.data(), digits.data() + 16, uuid.high, 16);
    std::from_chars(digits.data() + 16, digits.data() + 32, uuid.low, 16);
    return uuid;
}

std::uint8_t LedgerWalk::unitOf(const std::string& symbol) {
    auto known = std::ranges::find(units_, symbol);
    if (known == units_.end()) known = units_.insert(units_.end(), symbol);
    return static_cast<std::uint8_t>(known - units_.begin() + 1);
}

void LedgerWalk::survey(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    sayings_.hear(entry);
    const std::string& tare = entry.takenFrom.empty() ? entry.tare : entry.takenFrom;
    if (!tare.empty()) tares_.try_emplace(uuidOf(tare));
    if (entry.series && !entry.series->before.empty())
        tares_.try_emplace(uuidOf(entry.series->before));
    if (entry.kind == EntryKind::Shown && !entry.refersTo.empty()) {
        corrections_.try_emplace(entry.id, Correction{chained.sequence, entry.scale});
        tares_.try_emplace(uuidOf(entry.id));
    }
    const auto speaksOfCheck = [&](const ChainedEntry& check) {
        return check.entry.id == entry.refersTo;
    };
    if (entry.kind == EntryKind::Checked ||
        (entry.kind == EntryKind::Superseded && std::ranges::any_of(checks_, speaksOfCheck)))
        checks_.push_back(chained);
}

const LedgerWalk::TareShown* LedgerWalk::tareOf(const LedgerEntry& entry) const {
    const std::string& tare = entry.takenFrom.empty() ? entry.tare : entry.takenFrom;
    if (tare.empty()) return nullptr;
    const auto known = tares_.find(uuidOf(tare));
    return known != tares_.end() && known->second.unit != 0 ? &known->second : nullptr;
}

const Said* LedgerWalk::takenBack(const std::string& id) const {
    const Said* said = sayings_.about(id);
    return said != nullptr && !said->supersededBy.empty() ? said : nullptr;
}

LedgerWalk::Before LedgerWalk::beforeOf(const std::string& named) const {
    Before before{&named};
    while (const Said* said = takenBack(*before.id)) {
        const auto next = corrections_.find(said->successor);
        // A successor comes later in the chain, so that this ends.
        const bool later =
            next != corrections_.end() &&
            (before.last == nullptr || next->second.sequence > before.last->sequence);
        if (!later) {
            before.takenBack = said;
            return before;
        }
        before.last = &next->second;
        before.id = &next->first;
    }
    return before;
}

bool LedgerWalk::isSuspect(const Before& before) const {
    if (before.takenBack != nullptr) return false;
    const auto known = tares_.find(uuidOf(*before.id));
    if (known != tares_.end() && known->second.unit != 0) return known->second.netSuspect;
    return before.last != nullptr && scales_->isSuspect(before.last->scale, before.last->sequence);
}

void LedgerWalk::weigh(const LedgerEntry& entry, const TareShown* other, WalkedEntry& walked) {
    walked.gross = entry.shown;
    const bool fromJar = !entry.takenFrom.empty();
    if (other != nullptr) {
        (fromJar ? walked.jarBefore : walked.tare) = other->shown;
        if (other->unit == unitOf(entry.unit))
            walked.net =
                fromJar ? other->shown.minus(entry.shown) : entry.shown.minus(other->shown);
    } else if (entry.tare.empty() && !fromJar && entry.vesselTare) {
        walked.tare = entry.vesselTare;
        walked.net = entry.shown.minus(*entry.vesselTare);
    }
}

WalkedEntry LedgerWalk::look(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    if (!scales_) scales_.emplace(checks_);
    WalkedEntry walked;
    walked.said = sayings_.about(entry.id);
    if (!showsMass(entry.kind)) return walked;
    walked.suspect =
        entry.kind != EntryKind::Checked && scales_->isSuspect(entry.scale, chained.sequence);
    const TareShown* const other = tareOf(entry);
    weigh(entry, other, walked);
    const bool ownSuspect = walked.suspect;
    walked.suspect = ownSuspect || (other != nullptr && other->suspect);
    walked.ofTare = takenBack(entry.takenFrom.empty() ? entry.tare : entry.takenFrom);
    if (entry.series && !entry.series->before.empty()) {
        const Before before = beforeOf(entry.series->before);
        walked.ofBefore = before.takenBack;
        walked.suspect = walked.suspect || isSuspect(before);
    }
    if (const auto own = tares_.find(uuidOf(entry.id)); own != tares_.end())
        own->second = {entry.shown, unitOf(entry.unit), ownSuspect, walked.suspect};
    return walked;
}

}  // namespace nettare
