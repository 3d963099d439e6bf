#include "core/edit/line_amount.h"
#include "core/edit/line_parts.h"
#include "core/food/piece_word.h"
#include "core/quantity/amount.h"
#include "core/recipe/read_recipe.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// The line's unit or piece word is another one after the edit.
bool isOther(const Json& line, const LineAmount& typed) {
    if (typed.unit) return textAt(line, "unit") != *typed.unit;
    if (typed.piece)
        return line.find("unit") != nullptr || !samePiece(textAt(line, "piece"), *typed.piece);
    return false;
}

std::optional<Json> textOrNothing(const std::optional<std::string>& text) {
    return text ? std::optional{Json{*text}} : std::nullopt;
}

/// Remembers at that place the amount before, once, and forgets it when that amount is back.
/// `kept` is what is remembered so far.
void keepAmount(const std::string& place, std::string_view kept, std::string_view before,
                const std::string& after, EditDraft& draft) {
    if (kept == after) return draft.set(place, std::nullopt);
    if (kept.empty() && before != after && readAmount(before)) draft.set(place, Json{before});
}

/// Grams that were weighed or assumed belong to the amount of that time; what said the amount once
/// more says another one now.
void keepAmountOfGrams(const Json& line, const std::string& amount, EditDraft& draft) {
    const std::string_view id = textAt(line, "id"), before = textAt(line, "amount");
    if (before != amount)
        for (const std::string_view said : {"equals", "written"})
            draft.set(linePlace(id, said), std::nullopt);
    if (line.find("weighed") != nullptr)
        keepAmount(linePlace(id, "weighed_for"), textAt(line, "weighed_for"), before, amount,
                   draft);
    if (const Json* assumed = line.find("assumed"))
        keepAmount(linePlace(id, "assumed") + "/for", textAt(*assumed, "for"), before, amount,
                   draft);
}

/// What is to be said of the amount, beside unit and piece word: absent where it is not typed.
void setRest(const LineAmount& read, std::string_view line, EditDraft& draft) {
    std::optional<Json> each;
    if (read.each) {
        each = Json::object();
        each->set("amount", Json{read.each->amount}).set("unit", Json{read.each->unit});
    }
    draft.set(linePlace(line, "each"), std::move(each));
    draft.set(linePlace(line, "fill"), textOrNothing(read.fill));
}

/// The line loses its amount and what hangs on it.
LineEdit withoutAmount(const Json& line, EditDraft& draft) {
    const std::string_view id = textAt(line, "id");
    LineEdit result{{}, std::string{id}, {}};
    if (line.find("to_taste") == nullptr) {
        result.unbound = unbind(line, draft);
        for (const std::string_view member : {"amount", "unit", "piece", "as_purchased"})
            draft.set(linePlace(id, member), std::nullopt);
        draft.set(linePlace(id, "to_taste"), Json{true});
    }
    result.edit = draft.take();
    return result;
}

/// A line to taste counts pieces of its food where only a number is typed.
LineAmount ofToTaste(LineAmount read, std::string_view foodName) {
    if (!read.unit && !read.piece) read.piece = ownPiece(foodName);
    return read;
}

}  // namespace

Result<LineEdit> setLineAmount(const Json& document, std::string_view line,
                               std::string_view typed) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    const std::string_view name = nameOfLine(document, **found);
    EditDraft draft{document, EditKind::Amount, name};
    if (lowerAscii(trimmed(typed)) == kToTasteText) return withoutAmount(**found, draft);
    LineAmount read = readLineAmount(typed, textAt(**found, "piece"));
    if ((*found)->find("to_taste") != nullptr) {
        read = ofToTaste(std::move(read), name);
        draft.set(linePlace(line, "to_taste"), std::nullopt);
    }
    const std::string place = linePlace(line, "amount");
    auto amount = typedText(place, read.amount, kAmountLength);
    if (!amount) return fail(amount.error());
    if (read.piece)
        if (auto word = typedText(linePlace(line, "piece"), *read.piece, kNameLength); !word)
            return fail(word.error());
    draft.set(place, *amount);
    LineEdit result{{}, std::string{line}, {}};
    if (isOther(**found, read)) {
        draft.set(linePlace(line, "unit"), textOrNothing(read.unit));
        draft.set(linePlace(line, "piece"), textOrNothing(read.piece));
        result.unbound = unbind(**found, draft, {"each", "fill"});
    } else {
        keepAmountOfGrams(**found, *amount->text(), draft);
    }
    if (read.unit || read.piece) setRest(read, line, draft);
    result.edit = draft.take();
    return result;
}

}  // namespace nettare
