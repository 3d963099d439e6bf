#include "core/edit/line_edits.h"

#include "core/edit/line_amount.h"
#include "core/edit/line_parts.h"
#include "core/edit/place.h"
#include "core/edit/residue_parts.h"
#include "core/food/piece_word.h"
#include "core/recipe/read_recipe.h"
#include "core/support/text.h"

namespace nettare {

namespace {

Result<LineEdit> checkedLineEdit(EditDraft& draft, std::string_view line,
                                 std::vector<std::string> unbound = {}) {
    auto edit = draft.takeChecked();
    if (!edit) return fail(edit.error());
    return LineEdit{std::move(*edit), std::string{line}, std::move(unbound)};
}

}  // namespace

Result<LineEdit> setLineFood(const Json& document, std::string_view line,
                             const FoodChoice& choice) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    EditDraft draft{document, EditKind::Food, nameOfLine(document, **found)};
    const auto food = foodFor(document, choice, draft);
    if (!food) return fail(food.error());
    std::vector<std::string> unbound;
    if (*food != textAt(**found, "food")) {
        draft.set(linePlace(line, "food"), Json{*food});
        unbound = unbind(**found, draft);
        draft.set(linePlace(line, "as_purchased"), std::nullopt);
        dropFoodOf(document, **found, draft);
    }
    return checkedLineEdit(draft, line, std::move(unbound));
}

Result<LineEdit> setPreparation(const Json& document, std::string_view line,
                                std::string_view typed) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    EditDraft draft{document, EditKind::Preparation, nameOfLine(document, **found)};
    const std::string place = linePlace(line, "preparation");
    if (trimmed(typed).empty()) {
        draft.set(place, std::nullopt);
    } else {
        auto text = typedText(place, typed, kNameLength);
        if (!text) return fail(text.error());
        draft.set(place, std::move(*text));
    }
    return LineEdit{draft.take(), std::string{line}, {}};
}

Result<LineEdit> setWay(const Json& document, std::string_view line, std::optional<Way> way) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    EditDraft draft{document, EditKind::Way, nameOfLine(document, **found)};
    draft.set(linePlace(line, "way"), way ? std::optional{Json{nameOf(*way)}} : std::nullopt);
    return LineEdit{draft.take(), std::string{line}, {}};
}

Result<LineEdit> addLine(const Json& document, std::size_t at, std::string_view typed,
                         const FoodChoice& choice, std::string_view preparation) {
    if (at > itemsOf(document, "lines").size())
        return fail(Error{ErrorCode::EditDoesNotFit}.at(pointerTo("/lines", at)));
    std::string name = choice.name;
    if (const auto food = entryNamed(document, "foods", choice.existing))
        name = textAt(**food, "name");
    EditDraft draft{document, EditKind::AddLine, name};
    const auto food = foodFor(document, choice, draft);
    if (!food) return fail(food.error());
    const LineAmount amount = readLineAmount(typed);
    Json line = Json::object();
    const std::string id = freshId(document, "lines", name);
    line.set("id", Json{id}).set("amount", Json{amount.amount}).set("food", Json{*food});
    if (amount.unit)
        line.set("unit", Json{*amount.unit});
    else
        line.set("piece", Json{amount.piece ? *amount.piece : ownPiece(name)});
    if (!trimmed(preparation).empty()) line.set("preparation", Json{preparation});
    draft.insert("/lines", at, std::move(line));
    return checkedLineEdit(draft, id);
}

Result<LineEdit> removeLine(const Json& document, std::string_view line) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    const auto index = indexOfId(*document.find("lines"), line);
    if (itemsOf(document, "lines").size() == 1)
        return fail(Error{ErrorCode::LastLine}.at(pointerTo("/lines", *index)));
    EditDraft draft{document, EditKind::RemoveLine, nameOfLine(document, **found)};
    takeOutOfResidues(document, line, draft);
    draft.remove("/lines", *index);
    dropFoodOf(document, **found, draft);
    return checkedLineEdit(draft, line);
}

Result<LineEdit> moveLine(const Json& document, std::string_view line, std::size_t to) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    if (to >= itemsOf(document, "lines").size())
        return fail(Error{ErrorCode::EditDoesNotFit}.at(pointerTo("/lines", to)));
    EditDraft draft{document, EditKind::MoveLine, nameOfLine(document, **found)};
    draft.move("/lines", *indexOfId(*document.find("lines"), line), to);
    return LineEdit{draft.take(), std::string{line}, {}};
}

}  // namespace nettare
