#include "core/ledger/sayings.h"

namespace nettare {

void Sayings::hear(const LedgerEntry& entry) {
    if (entry.refersTo.empty()) return;
    switch (entry.kind) {
        case EntryKind::Superseded:
        case EntryKind::Shown:
            return overrule(entry);
        case EntryKind::LeftOut: {
            Said& said = said_[entry.refersTo];
            said.leftOut = true;
            said.asWeighed = false;
            said.whyLeftOut = entry.reason;
            subject_.emplace(entry.id, entry.refersTo);
            return;
        }
        case EntryKind::TakenIn:
            return takeIn(entry);
        case EntryKind::Reasoned:
            if (Said* said = meantBy(entry.refersTo))
                (said->supersededBy.empty() ? said->whyLeftOut : said->whySuperseded) =
                    entry.reason;
            return;
        default:
            return;
    }
}

void Sayings::overrule(const LedgerEntry& entry) {
    Said& said = said_[entry.refersTo];
    subject_.emplace(entry.id, entry.refersTo);
    if (entry.kind == EntryKind::Shown && said.successor.empty()) said.successor = entry.id;
    if (!said.supersededBy.empty()) return;
    said.supersededBy = entry.id;
    said.whySuperseded = entry.reason;
}

void Sayings::takeIn(const LedgerEntry& entry) {
    Said* const said = meantBy(entry.refersTo);
    if (said == nullptr || !said->supersededBy.empty()) {
        said_[entry.refersTo].asWeighed = true;
        return;
    }
    said->leftOut = false;
    said->whyLeftOut.clear();
}

Said* Sayings::meantBy(const std::string& id) {
    const auto overruled = [](const Said& said) {
        return said.leftOut || !said.supersededBy.empty();
    };
    auto at = said_.find(id);
    if (at != said_.end() && overruled(at->second)) return &at->second;
    const auto subject = subject_.find(id);
    if (subject == subject_.end()) return nullptr;
    at = said_.find(subject->second);
    return at != said_.end() && overruled(at->second) ? &at->second : nullptr;
}

const Said* Sayings::about(const std::string& id) const {
    const auto at = said_.find(id);
    return at != said_.end() ? &at->second : nullptr;
}

}  // namespace nettare
