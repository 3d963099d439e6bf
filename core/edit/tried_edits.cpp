#include "core/edit/tried_edits.h"

#include "core/edit/edit_draft.h"
#include "core/edit/line_amount.h"
#include "core/edit/line_edits.h"
#include "core/edit/line_parts.h"
#include "core/edit/scaled_amount.h"

namespace nettare {

namespace {

/// Weights are weighed, and who wrote a decimal reads one.
AmountForm formOf(std::string_view amount, std::string_view unit) {
    const Unit* known = findUnit(unit, MeasureSystem::UsCustomary);
    const bool weight = known != nullptr && known->kind == UnitKind::Mass;
    const bool written = amount.find_first_of(".,") != std::string_view::npos;
    return weight || written ? AmountForm::Decimal : AmountForm::Kitchen;
}

Result<std::string> scaledText(const Json& holder, const std::string& place,
                               const TriedAmount& tried) {
    const std::string_view text = textAt(holder, "amount");
    const auto amount = readAmount(text);
    if (!amount)
        return fail(Error{ErrorCode::NotAnAmount}.at(place).with(
            "found", text.empty() ? kToTasteText : text));
    return scaledAmount(*amount, tried.factor, formOf(text, textAt(holder, "unit")),
                        tried.rounding);
}

/// The second way in which a line says its amount: "1 cup (120 g)".
std::optional<Error> scaleEquals(const Json& line, const TriedAmount& tried, Edit& edit) {
    const Json* equals = line.find("equals");
    if (equals == nullptr) return std::nullopt;
    const std::string place = linePlace(tried.line, "equals");
    const auto text = scaledText(*equals, place + "/amount", tried);
    if (!text) return text.error();
    Json scaled = *equals;
    scaled.set("amount", Json{*text});
    edit.changes.emplace_back(SetMember{place, std::nullopt, std::move(scaled)});
    return std::nullopt;
}

Result<Edit> takeOverOne(const Json& document, const TriedAmount& tried) {
    const auto line = entryNamed(document, "lines", tried.line);
    if (!line) return fail(line.error());
    if (tried.factor == 0) {
        auto removed = removeLine(document, tried.line);
        if (!removed) return fail(removed.error());
        return std::move(removed->edit);
    }
    const auto text = scaledText(**line, linePlace(tried.line, "amount"), tried);
    if (!text) return fail(text.error());
    auto set = setLineAmount(document, tried.line, *text);
    if (!set) return fail(set.error());
    if (!changesNothing(set->edit))
        if (const auto error = scaleEquals(**line, tried, set->edit)) return fail(*error);
    return std::move(set->edit);
}

std::string namesOf(const Json& document, const std::vector<TriedAmount>& amounts) {
    std::string names;
    for (const TriedAmount& tried : amounts)
        if (const auto line = entryNamed(document, "lines", tried.line)) {
            if (!names.empty()) names += ", ";
            names += nameOfLine(document, **line);
        }
    return names;
}

}  // namespace

// One line after the other on what the lines before left of the document.
Result<Edit> takeOverAmounts(const Json& document, const std::vector<TriedAmount>& amounts) {
    Edit all = EditDraft{document, EditKind::Amount, namesOf(document, amounts)}.take();
    Json changed = document;
    for (const TriedAmount& tried : amounts) {
        auto one = takeOverOne(changed, tried);
        if (!one) return fail(one.error());
        if (const auto error = apply(*one, changed)) return fail(*error);
        for (Change& change : one->changes) all.changes.push_back(std::move(change));
    }
    return all;
}

}  // namespace nettare
