#include "core/edit/line_parts.h"
#include "core/edit/weighing_edits.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

std::optional<std::size_t> indexOfText(const Json::Array& list, std::string_view text) {
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i].text() != nullptr && *list[i].text() == text) return i;
    return std::nullopt;
}

/// Takes a reading out of the lists of the entries of a list, or the whole entry where the reading
/// was its last. Entries with readings stand at `place`.
void takeOutOfEntries(const Json& document, std::string_view list, std::string_view reading,
                      EditDraft& draft) {
    const Json::Array& entries = itemsOf(document, list);
    for (std::size_t i = entries.size(); i-- > 0;) {
        const Json::Array& readings = itemsOf(entries[i], "readings");
        const auto at = indexOfText(readings, reading);
        if (!at) continue;
        const std::string_view id = textAt(entries[i], "id");
        const std::string all = pointerTo("", list);
        const std::string entry = id.empty() ? pointerTo(all, i) : pointerTo(all, id);
        if (readings.size() > 1)
            draft.remove(entry + "/readings", *at);
        else
            draft.remove(all, i);
    }
}

/// Another test cook goes with the reading that weighed it.
void takeOffOtherCooks(const Json& holder, const std::string& place, std::string_view reading,
                       EditDraft& draft) {
    const Json::Array& cooks = itemsOf(holder, "other_cooks");
    for (std::size_t i = cooks.size(); i-- > 0;)
        if (indexOfText(itemsOf(cooks[i], "readings"), reading))
            draft.remove(place + "/other_cooks", i);
}

/// The series of finished pieces goes with its last reading.
void takeOffPieces(const Json& document, std::string_view reading, EditDraft& draft) {
    const Json* makes = document.find("makes");
    const auto series = entryNamed(document, "series", textAt(*makes, "weighed"));
    if (!series) return;
    const Json::Array& readings = itemsOf(**series, "readings");
    if (readings.size() == 1 && indexOfText(readings, reading))
        draft.set("/makes/weighed", std::nullopt);
}

/// Lines lose the reading, and the series that goes with its last one.
void takeOffLines(const Json& document, std::string_view reading, EditDraft& draft) {
    for (const Json& line : itemsOf(document, "lines")) {
        const std::string_view id = textAt(line, "id");
        const Json::Array& weighed = itemsOf(line, "weighed");
        if (const auto at = indexOfText(weighed, reading)) {
            draft.remove(linePlace(id, "weighed"), *at);
            if (weighed.size() == 1) {
                draft.set(linePlace(id, "weighed_for"), std::nullopt);
                if (textAt(line, "way") == nameOf(Way::Weighed))
                    draft.set(linePlace(id, "way"), std::nullopt);
            }
        }
        const Json* bound = line.find("series");
        if (bound == nullptr) continue;
        const auto series = entryNamed(document, "series", textAt(*bound, "id"));
        if (!series) continue;
        const Json::Array& readings = itemsOf(**series, "readings");
        if (readings.size() != 1 || !indexOfText(readings, reading)) continue;
        draft.set(linePlace(id, "series"), std::nullopt);
        if (textAt(line, "way") == nameOf(Way::Series))
            draft.set(linePlace(id, "way"), std::nullopt);
    }
}

void takeOffDish(const Json& document, std::string_view reading, EditDraft& draft) {
    const Json* cooked = document.find("cooked");
    if (cooked == nullptr) return;
    const Json::Array& readings = itemsOf(*cooked, "readings");
    const auto at = indexOfText(readings, reading);
    if (at && readings.size() == 1) {
        draft.set("/cooked", std::nullopt);
        return;
    }
    takeOffOtherCooks(*cooked, "/cooked", reading, draft);
    if (at) draft.remove("/cooked/readings", *at);
    if (const auto apart = indexOfText(itemsOf(*cooked, "not_eaten"), reading))
        draft.remove("/cooked/not_eaten", *apart);
}

}  // namespace

Result<Edit> unbindReading(const Json& document, std::string_view reading) {
    const auto known = entryNamed(document, "readings", reading);
    if (!known) return fail(known.error());
    EditDraft draft{document, EditKind::Unbind, reading};
    takeOffLines(document, reading, draft);
    takeOffPieces(document, reading, draft);
    takeOutOfEntries(document, "series", reading, draft);
    takeOutOfEntries(document, "residues", reading, draft);
    takeOffDish(document, reading, draft);
    return draft.takeChecked();
}

}  // namespace nettare
