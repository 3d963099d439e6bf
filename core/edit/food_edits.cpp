#include "core/edit/food_edits.h"

#include "core/edit/edit_draft.h"
#include "core/edit/line_parts.h"
#include "core/recipe/read_recipe.h"
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
