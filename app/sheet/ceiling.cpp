#include "app/sheet/ceiling.h"

#include "app/sheet/document_texts.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::string_view kPer = " per ";

/// "skewer" is the piece of this recipe.
std::optional<Basis> typedBasis(const Json& document, std::string_view word) {
    if (word == memberText(document.find("makes"), "piece")) return Basis::Piece;
    if (word == "100 g") return Basis::Hundred;
    return basisNamed(word);
}

}  // namespace

CeilingText ceilingOf(const Json& document) {
    for (const Json& target : entriesIn(document, "targets")) {
        const std::string atMost = memberText(&target, "at_most");
        if (memberText(&target, "component") == "ENERC_KCAL" && !atMost.empty())
            return {atMost, basisNamed(memberText(&target, "per")).value_or(Basis::Portion)};
    }
    return {};
}

CeilingText readCeiling(const Json& document, std::string_view typed) {
    CeilingText ceiling{{}, ceilingOf(document).per};
    if (const auto per = typed.find(kPer); per != std::string_view::npos) {
        if (const auto basis = typedBasis(document, trimmed(typed.substr(per + kPer.size()))))
            ceiling.per = *basis;
        typed = typed.substr(0, per);
    }
    typed = trimmed(typed);
    if (typed.ends_with("kcal")) typed.remove_suffix(4);
    ceiling.number = trimmed(typed);
    return ceiling;
}

std::string ceilingText(const Json& document) {
    const CeilingText ceiling = ceilingOf(document);
    if (ceiling.number.empty()) return {};
    switch (ceiling.per) {
        case Basis::Portion:
            return ceiling.number + " kcal";
        case Basis::Piece:
            return ceiling.number + " kcal per " + memberText(document.find("makes"), "piece");
        case Basis::Hundred:
            return ceiling.number + " kcal per 100 g";
        case Basis::Batch:
            return ceiling.number + " kcal per batch";
    }
    return {};
}

}  // namespace nettare
