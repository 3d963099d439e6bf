#include "core/edit/way_edits.h"

#include "core/edit/line_parts.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Puts the object in place of the member; what was chosen before no longer holds.
Result<LineEdit> giveWay(const Json& document, std::string_view line, std::string_view member,
                         Json object) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    EditDraft draft{document, EditKind::Way, nameOfLine(document, **found)};
    draft.set(linePlace(line, member), std::move(object));
    draft.set(linePlace(line, "way"), std::optional{Json{member}});
    auto edit = draft.takeChecked();
    if (!edit) return fail(edit.error());
    return LineEdit{std::move(*edit), std::string{line}, {}};
}

/// A decimal comma is a point in documents.
Json decimalText(std::string_view typed) {
    return Json{replaced(trimmed(typed), ",", ".")};
}

}  // namespace

Result<LineEdit> setAssumed(const Json& document, std::string_view line,
                            const TypedAssumption& typed) {
    Json assumed = Json::object();
    assumed.set("grams", decimalText(typed.grams)).set("within", decimalText(typed.within));
    assumed.set("reason", Json{trimmed(typed.reason)});
    return giveWay(document, line, "assumed", std::move(assumed));
}

Result<LineEdit> setDensity(const Json& document, std::string_view line,
                            const TypedDensity& typed) {
    Json density = Json::object();
    density.set("g_per_ml", decimalText(typed.gramsPerMl));
    density.set("within", decimalText(typed.within)).set("reason", Json{trimmed(typed.reason)});
    return giveWay(document, line, "density", std::move(density));
}

}  // namespace nettare
