#include "random_changes.h"

#include "core/edit/place.h"
#include "core/support/json.h"
#include "json_edit.h"

namespace nettare {

namespace {

void collect(const Json& value, const std::string& place, bool lists,
             std::vector<std::string>& found) {
    if (const Json::Object* members = value.members()) {
        if (!lists) found.push_back(place);
        for (const JsonMember& member : *members)
            collect(member.value, pointerTo(place, member.key), lists, found);
    }
    const Json::Array* items = value.items();
    if (items == nullptr) return;
    if (lists) found.push_back(place);
    for (std::size_t i = 0; i < items->size(); ++i) {
        const Json* id = (*items)[i].find("id");
        const std::string inner =
            id != nullptr ? pointerTo(place, *id->text()) : pointerTo(place, i);
        collect((*items)[i], inner, lists, found);
    }
}

}  // namespace

std::vector<std::string> objectPlaces(const Json& document) {
    std::vector<std::string> found;
    collect(document, "", false, found);
    return found;
}

std::vector<std::string> listPlaces(const Json& document) {
    std::vector<std::string> found;
    collect(document, "", true, found);
    return found;
}

std::vector<Json> demoDocuments() {
    std::vector<Json> documents;
    for (const char* name : {"prawn-fennel-skewers", "barley-beetroot-patties"})
        documents.push_back(
            jsonOf(fileText(std::string{NETTARE_RESOURCES} + "/demo/" + name + ".json")));
    return documents;
}

Json RandomChanges::anyValue() {
    switch (below(5)) {
        case 0:
            return Json{};
        case 1:
            return Json{static_cast<double>(random_()) / 7.0};
        case 2:
            return Json{"½ \"ripe\" fig\n/~"};
        case 3:
            return Json::array();
        default: {
            Json object = Json::object();
            object.set("a/b~c", Json{static_cast<double>(below(100))});
            return object;
        }
    }
}

Change RandomChanges::anyChange(const Json& document) {
    const auto lists = listPlaces(document);
    const std::string& list = lists[below(lists.size())];
    const Json::Array& items = *valueAt(document, list)->items();
    const std::size_t kind = below(6);
    if (kind == 0 || (items.empty() && kind < 3))
        return InsertEntry{list, below(items.size() + 1), anyValue(), false};
    if (kind == 1) {
        const std::size_t at = below(items.size());
        // A list that another list holds cannot be dropped: it is no member.
        const bool member = valueAt(document, partsOf(list).parent)->members() != nullptr;
        return RemoveEntry{list, at, items[at], items.size() == 1 && member && below(2) == 0};
    }
    if (kind == 2) return MoveEntry{list, below(items.size()), below(items.size())};
    const auto objects = objectPlaces(document);
    const std::string& place = objects[below(objects.size())];
    const Json::Object& members = *valueAt(document, place)->members();
    std::string key = "new/key~" + std::to_string(below(3));
    if (!members.empty() && below(4) != 0) key = members[below(members.size())].key;
    if (key == "id") key = "name";
    const Json* before = valueAt(document, place)->find(key);
    if (before == nullptr && kind == 3)
        return InsertEntry{pointerTo(place, key), 0, anyValue(), true};
    SetMember set{pointerTo(place, key), {}, {}};
    if (before != nullptr) set.before = *before;
    if (below(4) != 0) set.after = anyValue();
    return set;
}

Edit RandomChanges::next(const Json& document) {
    Edit edit{static_cast<EditKind>(below(23)), "what was done", {}};
    Json after = document;
    for (std::size_t more = 1 + below(3); more > 0; --more) {
        edit.changes.push_back(anyChange(after));
        // Each must fit what those before it made.
        after = *applied(document, edit);
    }
    return edit;
}

}  // namespace nettare
