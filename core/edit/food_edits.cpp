#include "core/edit/food_edits.h"

#include "core/edit/edit_draft.h"
#include "core/edit/line_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// The value as an entry of the document.
Json statedJson(Component component, const TypedValue& typed, Json reason) {
    Json value = Json::object();
    value.set("component", Json{factsOf(component).tagname});
    value.set("per_100g", Json{trimmed(typed.per100g)});
    if (const auto within = trimmed(typed.within); !within.empty())
        value.set("within", Json{within});
    return value.set("reason", std::move(reason));
}

}  // namespace

Result<Edit> setStatedValue(const Json& document, std::string_view food, Component component,
                            const TypedValue& typed) {
    const auto entry = entryNamed(document, "foods", food);
    if (!entry) return fail(entry.error());
    const std::string place = pointerTo(pointerTo("/foods", food), "stated");
    if (trimmed(typed.per100g).empty()) return fail(Error{ErrorCode::EmptyText}.at(place));
    auto reason = typedText(place, typed.reason, kNameLength);
    if (!reason) return fail(reason.error());
    Json values = Json::array();
    for (const Json& held : itemsOf(**entry, "stated"))
        if (textAt(held, "component") != factsOf(component).tagname) values.append(held);
    values.append(statedJson(component, typed, std::move(*reason)));
    EditDraft draft{document, EditKind::Stated, textAt(**entry, "name")};
    draft.set(place, std::move(values));
    return draft.takeChecked();
}

Result<Edit> setAddedSugars(const Json& document, std::string_view food, AddedSugarKind kind,
                            std::string_view per100g, std::string_view reason) {
    const auto entry = entryNamed(document, "foods", food);
    if (!entry) return fail(entry.error());
    const std::string place = pointerTo("/foods", food);
    if ((*entry)->find("recipe") != nullptr)
        return fail(Error{ErrorCode::UnknownReference}.with("found", food).at(place));
    const std::string sugars = pointerTo(place, "added_sugars");
    auto why = typedText(pointerTo(sugars, "reason"), reason, kNameLength);
    if (!why) return fail(why.error());
    Json said = Json::object();
    said.set("kind", Json{wordFor(kind, kAddedSugarWords)});
    if (kind == AddedSugarKind::Stated) {
        if (trimmed(per100g).empty())
            return fail(Error{ErrorCode::EmptyText}.at(pointerTo(sugars, "per_100g")));
        said.set("per_100g", Json{trimmed(per100g)});
    }
    EditDraft draft{document, EditKind::Stated, textAt(**entry, "name")};
    draft.set(sugars, said.set("reason", std::move(*why)));
    // A stated value would win over what is said here.
    const Json::Array& stated = itemsOf(**entry, "stated");
    for (std::size_t i = 0; i < stated.size(); ++i)
        if (textAt(stated[i], "component") == factsOf(Component::SUGAD).tagname)
            draft.remove(pointerTo(place, "stated"), i);
    return draft.takeChecked();
}

Result<Edit> setTableRow(const Json& document, std::string_view food, const TableRow& row) {
    const auto entry = entryNamed(document, "foods", food);
    if (!entry) return fail(entry.error());
    const std::string place = pointerTo("/foods", food);
    if ((*entry)->find("recipe") != nullptr)
        return fail(Error{ErrorCode::UnknownReference}.with("found", food).at(place));
    EditDraft draft{document, EditKind::OtherRow, textAt(**entry, "name")};
    draft.set(pointerTo(place, "table"), rowJson(row));
    return draft.takeChecked();
}

}  // namespace nettare
