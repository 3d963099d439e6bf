#include "core/edit/ledger_readings.h"

#include <utility>

#include "core/edit/reading_entries.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

bool isDecimal(const Json& entry, std::string_view key, Decimal wanted) {
    const auto there = Decimal::read(textAt(entry, key));
    return there && *there == wanted;
}

/// The id of the first entry of a list that does; nothing where none does.
template <class Predicate>
std::optional<std::string> idWhere(const Json& holder, std::string_view list, Predicate does) {
    for (const Json& entry : itemsOf(holder, list))
        if (does(entry)) return std::string{textAt(entry, "id")};
    return std::nullopt;
}

/// An empty vessel's entry says no state.
WeighedState stateShown(const LedgerEntry& entry) {
    return entry.kind == EntryKind::Vessel ? WeighedState::Empty : entry.state;
}

std::string_view vesselCalled(const LedgerEntry& entry) {
    return entry.vessel.empty() ? std::string_view{"vessel"} : std::string_view{entry.vessel};
}

}  // namespace

LedgerReadings::LedgerReadings(const Json& document, EditDraft& draft)
    : document_{document}, draft_{draft}, equipment_{Json::object()} {
    for (const std::string_view list : {"scales", "vessels"}) {
        Json entries = Json::array();
        for (const Json& entry : itemsOf(document, list)) entries.append(entry);
        equipment_.set(list, std::move(entries));
    }
    for (const Json& entry : itemsOf(document, "indications"))
        indications_.emplace(textAt(entry, "id"), &entry);
    for (const Json& entry : itemsOf(document, "readings"))
        readings_.emplace(textAt(entry, "gross"), &entry);
}

void LedgerReadings::know(const std::vector<LedgerReading>& readings) {
    for (const LedgerReading& reading : readings) known_.emplace(reading.entry().id, &reading);
}

const LedgerReading* LedgerReadings::known(const std::string& entry) const {
    const auto at = known_.find(entry);
    return at != known_.end() ? at->second : nullptr;
}

const LedgerReading* LedgerReadings::standing(const std::string& entry) const {
    const LedgerReading* reading = known(entry);
    while (reading != nullptr && !reading->supersededBy.empty()) {
        const LedgerReading* next = known(reading->successor);
        // A successor comes later in the chain, so that this ends.
        const bool later = next != nullptr && next->chained.sequence > reading->chained.sequence;
        reading = later ? next : nullptr;
    }
    return reading;
}

std::optional<LedgerReadings::Parts> LedgerReadings::partsOf(const LedgerReading& reading) const {
    const LedgerEntry& entry = reading.entry();
    if (!reading.net) return std::nullopt;
    Parts parts{&reading, nullptr, nullptr};
    if (!entry.takenFrom.empty())
        parts = {known(entry.takenFrom), &reading, nullptr};
    else if (!entry.tare.empty())
        parts.tare = known(entry.tare);
    else
        return parts;
    if (parts.tare != nullptr && parts.tare->entry().kind == EntryKind::Vessel) {
        parts.vessel = std::exchange(parts.tare, nullptr);
        return parts;
    }
    return parts.gross != nullptr && parts.tare != nullptr ? std::optional{parts} : std::nullopt;
}

std::optional<std::string> LedgerReadings::scaleOf(const LedgerEntry& entry) const {
    return idWhere(equipment_, "scales", [&](const Json& scale) {
        return textAt(scale, "name") == entry.scale && textAt(scale, "unit") == entry.unit &&
               isDecimal(scale, "readability", entry.readability);
    });
}

std::string_view LedgerReadings::unitOfScale(std::string_view id) const {
    for (const Json& scale : itemsOf(equipment_, "scales"))
        if (textAt(scale, "id") == id) return textAt(scale, "unit");
    return {};
}

bool LedgerReadings::isVessel(const Json& vessel, const Parts& parts) const {
    const LedgerEntry& entry = parts.gross->entry();
    const std::string_view scale = textAt(vessel, "scale");
    if (parts.vessel != nullptr) {
        const LedgerEntry& empty = parts.vessel->entry();
        return textAt(vessel, "name") == vesselCalled(empty) &&
               isDecimal(vessel, "tare", empty.shown) && scaleOf(empty) == scale;
    }
    // It may have been weighed empty on another scale than the one it stands on now.
    return textAt(vessel, "name") == vesselCalled(entry) &&
           isDecimal(vessel, "tare", *entry.vesselTare) && unitOfScale(scale) == entry.unit;
}

std::optional<std::string> LedgerReadings::vesselOf(const Parts& parts) const {
    return idWhere(equipment_, "vessels",
                   [&](const Json& vessel) { return isVessel(vessel, parts); });
}

// A document's own indication has another id in the ledger, which says what that was; its time may
// be missing in the document.
bool LedgerReadings::isSameMoment(const Json& indication, const LedgerEntry& entry) const {
    const std::string_view at = textAt(indication, "at");
    const bool sameTime = at == entry.at || (at.empty() && entry.origin == EntryOrigin::Document);
    return sameTime && isDecimal(indication, "shown", entry.shown) &&
           textAt(indication, "state") == wordFor(stateShown(entry), kStateWords) &&
           scaleOf(entry) == textAt(indication, "scale");
}

std::optional<std::string> LedgerReadings::indicationOf(const LedgerReading& reading) const {
    const LedgerEntry& entry = reading.entry();
    if (indications_.contains(entry.id)) return entry.id;
    const auto own = indications_.find(entry.indication);
    if (own != indications_.end() && isSameMoment(*own->second, entry)) return entry.indication;
    return indicated_.contains(entry.id) ? std::optional{entry.id} : std::nullopt;
}

const Json* LedgerReadings::readingAt(const LedgerReading& reading, const Parts& parts) const {
    const auto gross = indicationOf(*parts.gross);
    if (!gross) return nullptr;
    // An empty vessel may also stand in the document as what the scale showed.
    const LedgerReading* const shown = parts.tare != nullptr ? parts.tare : parts.vessel;
    const auto tare = shown != nullptr ? indicationOf(*shown) : std::nullopt;
    const auto vessel = parts.tare == nullptr ? vesselOf(parts) : std::nullopt;
    const auto [first, last] = readings_.equal_range(*gross);
    for (auto at = first; at != last; ++at) {
        const Json& there = *at->second;
        const std::string_view pieces = textAt(there, "pieces");
        if ((pieces.empty() ? "1" : pieces) != std::to_string(reading.entry().pieces)) continue;
        if (tare && textAt(there, "tare") == *tare) return &there;
        if (vessel && textAt(there, "vessel") == *vessel) return &there;
    }
    return nullptr;
}

std::optional<std::string> LedgerReadings::idOf(const LedgerReading& reading) const {
    const auto parts = partsOf(reading);
    const Json* there = parts ? readingAt(reading, *parts) : nullptr;
    return there != nullptr ? std::optional{std::string{textAt(*there, "id")}} : std::nullopt;
}

std::string LedgerReadings::addScale(const LedgerEntry& entry) {
    if (auto known = scaleOf(entry)) return *known;
    const ScaleEntry scale{freshId(equipment_, "scales", entry.scale), entry.scale, entry.unit,
                           entry.readability, std::nullopt};
    equipment_.find("scales")->append(scaleJson(scale));
    draft_.append("/scales", scaleJson(scale));
    return scale.id;
}

std::string LedgerReadings::addVessel(const Parts& parts) {
    if (auto known = vesselOf(parts)) return *known;
    const bool weighed = parts.vessel != nullptr;
    const LedgerEntry& entry = weighed ? parts.vessel->entry() : parts.gross->entry();
    const std::string name{vesselCalled(entry)};
    const VesselEntry vessel{freshId(equipment_, "vessels", name), name, addScale(entry),
                             weighed ? entry.shown : *entry.vesselTare};
    equipment_.find("vessels")->append(vesselJson(vessel));
    draft_.append("/vessels", vesselJson(vessel));
    return vessel.id;
}

std::string LedgerReadings::addIndication(const LedgerReading& reading) {
    if (auto known = indicationOf(reading)) return *known;
    const LedgerEntry& entry = reading.entry();
    const RecordedIndication indication{entry.id, addScale(entry), entry.shown, stateShown(entry),
                                        entry.at};
    draft_.append("/indications", indicationJson(indication));
    indicated_.insert(entry.id);
    return entry.id;
}

std::optional<std::string> LedgerReadings::add(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    if (const auto added = added_.find(entry.id); added != added_.end()) return added->second;
    if (auto there = idOf(reading)) return there;
    const auto parts = partsOf(reading);
    if (!parts) return std::nullopt;
    RecordedReading recorded;
    recorded.pieces = entry.pieces;
    if (parts->tare == nullptr) {
        recorded.tare = addVessel(*parts);
    } else {
        RecordedIndication tare;
        tare.id = addIndication(*parts->tare);
        recorded.tare = std::move(tare);
    }
    recorded.gross.id = addIndication(*parts->gross);
    const std::string id = freshId(document_, "readings", entry.id);
    Json json = readingJson(recorded);
    draft_.append("/readings", json.set("id", Json{id}));
    added_.emplace(entry.id, id);
    return id;
}

}  // namespace nettare
