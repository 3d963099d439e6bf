#include "core/edit/edit.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json_reader.h"

namespace nettare {

namespace {

constexpr std::array<Word<EditKind>, 25> kEditWords{{
    {"title", EditKind::Title},
    {"note", EditKind::Note},
    {"yield", EditKind::Yield},
    {"portion", EditKind::Portion},
    {"target", EditKind::Target},
    {"amount", EditKind::Amount},
    {"food", EditKind::Food},
    {"preparation", EditKind::Preparation},
    {"add line", EditKind::AddLine},
    {"remove line", EditKind::RemoveLine},
    {"move line", EditKind::MoveLine},
    {"way", EditKind::Way},
    {"add step", EditKind::AddStep},
    {"change step", EditKind::ChangeStep},
    {"remove step", EditKind::RemoveStep},
    {"move step", EditKind::MoveStep},
    {"reading", EditKind::Reading},
    {"unbind", EditKind::Unbind},
    {"assumption", EditKind::Assumption},
    {"counting", EditKind::Counting},
    {"optional", EditKind::Optional},
    {"residue", EditKind::Residue},
    {"stated", EditKind::Stated},
    {"other-row", EditKind::OtherRow},
    {"bring back", EditKind::BringBack},
}};

constexpr std::size_t kMostChanges = 10'000;
constexpr long long kMostIndex = 1'000'000;

Json indexJson(std::size_t index) {
    return Json{static_cast<double>(index)};
}

/// The key that holds the place says what kind of change it is.
Json changeJson(const SetMember& set) {
    Json json = Json::object();
    json.set("set", Json{set.place});
    if (set.before) json.set("before", *set.before);
    if (set.after) json.set("after", *set.after);
    return json;
}
Json changeJson(const InsertEntry& insert) {
    Json json = Json::object();
    json.set("insert", Json{insert.list}).set("at", indexJson(insert.at));
    if (insert.makeList) json.set("makes_list", Json{true});
    return json.set("entry", insert.entry);
}
Json changeJson(const RemoveEntry& remove) {
    Json json = Json::object();
    json.set("remove", Json{remove.list}).set("at", indexJson(remove.at));
    if (remove.dropList) json.set("drops_list", Json{true});
    return json.set("entry", remove.entry);
}
Json changeJson(const MoveEntry& move) {
    Json json = Json::object();
    json.set("move", Json{move.list}).set("from", indexJson(move.from));
    return json.set("to", indexJson(move.to));
}

/// A place may be empty and hold what a key may hold, so it is no plain text.
std::string readPlace(ObjectReader& reader, std::string_view key) {
    const Json* value = reader.value(key);
    if (value == nullptr) return {};
    if (value->text() != nullptr) return *value->text();
    reader.failure() = Error{ErrorCode::WrongKind}
                           .with("wanted", "text in quotes")
                           .with("found", kindOf(*value))
                           .at(pointerTo(reader.pointer(), key));
    return {};
}

std::size_t readIndex(ObjectReader& reader, std::string_view key) {
    return static_cast<std::size_t>(reader.wholeNumber(key, 0, kMostIndex));
}

Json readEntryOf(ObjectReader& reader) {
    const Json* entry = reader.value("entry");
    return entry != nullptr ? *entry : Json{};
}

std::optional<Json> readOptional(ObjectReader& reader, std::string_view key) {
    if (!reader.has(key)) return std::nullopt;
    return *reader.value(key);
}

Change readChange(ObjectReader& reader) {
    static constexpr std::array<std::string_view, 4> kKinds{"set", "insert", "remove", "move"};
    switch (reader.exactlyOneOf(kKinds)) {
        case 0: {
            SetMember set{readPlace(reader, "set"), {}, {}};
            set.before = readOptional(reader, "before");
            set.after = readOptional(reader, "after");
            return set;
        }
        case 1: {
            InsertEntry insert{readPlace(reader, "insert"), readIndex(reader, "at"),
                               readEntryOf(reader), false};
            insert.makeList = reader.optionalFlag("makes_list");
            return insert;
        }
        case 2: {
            RemoveEntry remove{readPlace(reader, "remove"), readIndex(reader, "at"),
                               readEntryOf(reader), false};
            remove.dropList = reader.optionalFlag("drops_list");
            return remove;
        }
        default:
            return MoveEntry{readPlace(reader, "move"), readIndex(reader, "from"),
                             readIndex(reader, "to")};
    }
}

}  // namespace

std::string_view nameOf(EditKind kind) {
    return wordFor(kind, kEditWords);
}

Json editJson(const Edit& edit) {
    Json json = Json::object();
    json.set("kind", Json{nameOf(edit.kind)});
    if (!edit.subject.empty()) json.set("subject", Json{edit.subject});
    Json changes = Json::array();
    for (const Change& any : edit.changes)
        changes.append(std::visit([](const auto& one) { return changeJson(one); }, any));
    return json.set("changes", std::move(changes));
}

Result<Edit> readEdit(const Json& json) {
    std::optional<Error> failure;
    ObjectReader reader{json, "", failure};
    Edit edit;
    edit.kind = reader.oneOf("kind", kEditWords);
    edit.subject = reader.optionalText("subject", kProseLength).value_or("");
    for (const auto& [change, pointer] : reader.items("changes", 0, kMostChanges)) {
        ObjectReader one{change, pointer, failure};
        edit.changes.push_back(readChange(one));
        one.finish();
    }
    reader.finish();
    if (failure) return fail(*failure);
    return edit;
}

}  // namespace nettare
