#include "core/edit/reading_entries.h"

#include <algorithm>

#include "core/edit/place.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

bool isThere(const Json& document, std::string_view list, std::string_view id) {
    const Json* entries = document.find(list);
    return entries != nullptr && indexOfId(*entries, id).has_value();
}

template <class Entry>
bool isAmong(const std::vector<Entry>& entries, std::string_view id) {
    return std::ranges::any_of(entries, [&](const Entry& entry) { return entry.id == id; });
}

std::optional<Error> unknown(std::string_view list, std::string_view id) {
    return Error{ErrorCode::UnknownReference}.with("found", id).at(pointerTo("", list));
}

/// A scale that is added once, however many of the recorded things it weighed.
std::optional<Error> useScale(const Json& document, const RecordedReading& recorded,
                              std::string_view id) {
    const bool known = isThere(document, "scales", id) || isAmong(recorded.scales, id);
    return known ? std::nullopt : unknown("scales", id);
}

std::optional<Error> addIndication(const Json& document, const RecordedReading& recorded,
                                   const RecordedIndication& indication, EditDraft& draft) {
    if (isThere(document, "indications", indication.id)) return std::nullopt;
    if (auto error = useScale(document, recorded, indication.scale)) return error;
    draft.append("/indications", indicationJson(indication));
    return std::nullopt;
}

}  // namespace

Json scaleJson(const ScaleEntry& scale) {
    Json json = Json::object();
    json.set("id", Json{scale.id}).set("name", Json{scale.name}).set("unit", Json{scale.unit});
    json.set("readability", Json{scale.readability.text()});
    if (scale.calibration) json.set("calibration", Json{scale.calibration->text()});
    return json;
}

Json vesselJson(const VesselEntry& vessel) {
    Json json = Json::object();
    json.set("id", Json{vessel.id}).set("name", Json{vessel.name});
    return json.set("scale", Json{vessel.scale}).set("tare", Json{vessel.tare.text()});
}

Json indicationJson(const RecordedIndication& indication) {
    Json json = Json::object();
    json.set("id", Json{indication.id}).set("scale", Json{indication.scale});
    json.set("shown", Json{indication.shown.text()});
    json.set("state", Json{wordFor(indication.state, kStateWords)});
    if (!indication.at.empty()) json.set("at", Json{indication.at});
    return json;
}

Json readingJson(const RecordedReading& recorded) {
    Json json = Json::object();
    json.set("id", Json{recorded.gross.id}).set("gross", Json{recorded.gross.id});
    if (const auto* shown = std::get_if<RecordedIndication>(&recorded.tare))
        json.set("tare", Json{shown->id});
    else
        json.set("vessel", Json{std::get<std::string>(recorded.tare)});
    if (recorded.pieces != 1) json.set("pieces", Json{std::to_string(recorded.pieces)});
    return json;
}

std::optional<Error> addReadingEntries(const Json& document, const RecordedReading& recorded,
                                       EditDraft& draft) {
    if (isThere(document, "readings", recorded.gross.id))
        return Error{ErrorCode::DuplicateId}.with("found", recorded.gross.id).at("/readings");
    for (const ScaleEntry& scale : recorded.scales)
        if (!isThere(document, "scales", scale.id)) draft.append("/scales", scaleJson(scale));
    for (const VesselEntry& vessel : recorded.vessels)
        if (!isThere(document, "vessels", vessel.id)) draft.append("/vessels", vesselJson(vessel));
    if (const auto* shown = std::get_if<RecordedIndication>(&recorded.tare)) {
        if (auto error = addIndication(document, recorded, *shown, draft)) return error;
    } else {
        const std::string& vessel = std::get<std::string>(recorded.tare);
        if (!isThere(document, "vessels", vessel) && !isAmong(recorded.vessels, vessel))
            return unknown("vessels", vessel);
    }
    if (auto error = addIndication(document, recorded, recorded.gross, draft)) return error;
    draft.append("/readings", readingJson(recorded));
    return std::nullopt;
}

}  // namespace nettare
