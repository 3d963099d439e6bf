#include "app/sheet/yield_edits.h"

#include <algorithm>

#include "app/sheet/ceiling.h"
#include "app/sheet/document_texts.h"
#include "core/edit/heading_edits.h"
#include "core/edit/line_amount.h"
#include "core/food/piece_word.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Adds what `next` changes to `edit`; the document goes along.
Result<void> join(Edit& edit, Json& document, Result<Edit> next) {
    if (!next) return fail(next.error());
    auto after = applied(document, *next);
    if (!after) return fail(after.error());
    document = std::move(*after);
    edit.changes.insert(edit.changes.end(), next->changes.begin(), next->changes.end());
    return {};
}

/// The typed text without its number.
std::string_view wordOf(std::string_view typed, const LineAmount& read) {
    return trimmed(trimmed(typed).substr(std::min(read.amount.size(), trimmed(typed).size())));
}

/// A comma as the decimal mark, where it is the only mark.
std::string pointed(std::string number) {
    if (std::ranges::count(number, ',') == 1 && number.find('.') == std::string::npos)
        std::ranges::replace(number, ',', '.');
    return number;
}

}  // namespace

Result<Edit> makesEdit(const Json& document, const std::string& typed) {
    const LineAmount read = readLineAmount(typed);
    auto edit = setYield(document, read.amount);
    const std::string word{wordOf(typed, read)};
    if (!edit || word.empty()) return edit;
    auto changed = applied(document, *edit);
    if (!changed) return fail(changed.error());
    const std::string one = memberText(document.find("makes"), "piece");
    const std::string several = memberText(document.find("makes"), "plural");
    if (word == one || word == several) return edit;
    const std::string piece = singularOf(word);
    if (auto done = join(*edit, *changed, setPieceWord(*changed, piece)); !done)
        return fail(done.error());
    const std::string plural = word == piece ? pluralOf(piece) : word;
    if (auto done = join(*edit, *changed, setPiecesWord(*changed, plural)); !done)
        return fail(done.error());
    return edit;
}

Result<Edit> portionEdit(const Json& document, const std::string& typed) {
    const LineAmount read = readLineAmount(typed);
    if (read.unit == "g") return setPortionGrams(document, pointed(read.amount));
    return setPortionPieces(document, read.amount);
}

// A ceiling that is now per something else takes the place of the one before.
Result<Edit> ceilingEdit(const Json& document, const std::string& typed) {
    const auto set = [](const Json& in, Basis per, const std::string& number) {
        return setTarget(in, Component::ENERC_KCAL, per, TargetEnd::AtMost, number);
    };
    const CeilingText before = ceilingOf(document), after = readCeiling(document, typed);
    if (before.number.empty() || before.per == after.per)
        return set(document, after.per, pointed(after.number));
    auto edit = set(document, before.per, {});
    if (!edit) return edit;
    auto without = applied(document, *edit);
    if (!without) return fail(without.error());
    if (auto done = join(*edit, *without, set(*without, after.per, pointed(after.number))); !done)
        return fail(done.error());
    return edit;
}

}  // namespace nettare
