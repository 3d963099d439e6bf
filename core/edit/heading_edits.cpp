#include "core/edit/heading_edits.h"

#include <array>

#include "core/edit/edit_draft.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::array<Word<Assumption>, 5> kAssumptionKeys{{
    {"piece_spread", Assumption::PieceSpread},
    {"volume_spread", Assumption::VolumeSpread},
    {"spread_freedom", Assumption::SpreadFreedom},
    {"declaration_spread", Assumption::DeclarationSpread},
    {"composition_spread", Assumption::CompositionSpread},
}};

/// A member that holds any plain text.
Result<Edit> setPlain(const Json& document, EditKind kind, const std::string& place,
                      std::string_view typed, std::size_t most) {
    auto text = typedText(place, typed, most);
    if (!text) return fail(text.error());
    EditDraft draft{document, kind, textAt(document, "title")};
    draft.set(place, std::move(*text));
    return draft.take();
}

Json holding(std::string_view key, std::string_view text) {
    Json json = Json::object();
    return json.set(key, Json{text});
}

std::string_view keyOf(TargetEnd end) {
    return end == TargetEnd::AtMost ? "at_most" : "at_least";
}

}  // namespace

Result<Edit> setTitle(const Json& document, std::string_view typed) {
    return setPlain(document, EditKind::Title, "/title", typed, kNameLength);
}

Result<Edit> setNote(const Json& document, std::string_view typed) {
    if (!trimmed(typed).empty())
        return setPlain(document, EditKind::Note, "/note", typed, kProseLength);
    EditDraft draft{document, EditKind::Note, textAt(document, "title")};
    draft.set("/note", std::nullopt);
    return draft.take();
}

Result<Edit> setYield(const Json& document, std::string_view typed) {
    return setPlain(document, EditKind::Yield, "/makes/pieces", typed, kAmountLength);
}

Result<Edit> setPieceWord(const Json& document, std::string_view typed) {
    return setPlain(document, EditKind::Yield, "/makes/piece", typed, kNameLength);
}

Result<Edit> setPiecesWord(const Json& document, std::string_view typed) {
    return setPlain(document, EditKind::Yield, "/makes/plural", typed, kNameLength);
}

Result<Edit> setPortionPieces(const Json& document, std::string_view typed) {
    EditDraft draft{document, EditKind::Portion, textAt(document, "title")};
    draft.set("/portion", holding("pieces", typed));
    return draft.takeChecked();
}

Result<Edit> setPortionGrams(const Json& document, std::string_view typed) {
    EditDraft draft{document, EditKind::Portion, textAt(document, "title")};
    draft.set("/portion", holding("grams", trimmed(typed)));
    return draft.takeChecked();
}

Result<Edit> setTarget(const Json& document, Component component, Basis per, TargetEnd end,
                       std::string_view typed) {
    EditDraft draft{document, EditKind::Target, factsOf(component).name};
    const Json::Array& targets = itemsOf(document, "targets");
    const std::string_view value = trimmed(typed);
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const bool same = textAt(targets[i], "component") == factsOf(component).tagname &&
                          textAt(targets[i], "per") == nameOf(per) &&
                          targets[i].find(keyOf(end)) != nullptr;
        if (!same) continue;
        if (value.empty())
            draft.remove("/targets", i);
        else
            draft.set(pointerTo(pointerTo("/targets", i), keyOf(end)), Json{value});
        return draft.takeChecked();
    }
    if (value.empty()) return draft.take();
    Json target = Json::object();
    target.set("component", Json{factsOf(component).tagname}).set("per", Json{nameOf(per)});
    draft.append("/targets", target.set(keyOf(end), Json{value}));
    return draft.takeChecked();
}

Result<Edit> setAssumption(const Json& document, Assumption which, std::string_view typed) {
    EditDraft draft{document, EditKind::Assumption, ""};
    const std::string_view key = wordFor(which, kAssumptionKeys);
    const std::string_view value = trimmed(typed);
    const Json* there = document.find("assumptions");
    Json all = there != nullptr ? *there : Json::object();
    if (value.empty())
        all.remove(key);
    else
        all.set(key, Json{value});
    const bool none = all.members() == nullptr || all.members()->empty();
    draft.set("/assumptions", none ? std::nullopt : std::optional{std::move(all)});
    return draft.takeChecked();
}

Edit bringBack(const Json& document, const Json& older, std::string_view subject) {
    EditDraft draft{document, EditKind::BringBack, subject};
    draft.set("", older);
    return draft.take();
}

}  // namespace nettare
