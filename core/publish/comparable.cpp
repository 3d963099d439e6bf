#include "core/publish/comparable.h"

#include <algorithm>

#include "core/publish/one_sided_residue.h"
#include "core/quantity/amount.h"

namespace nettare {

namespace {

bool isRangeText(const std::string& text) {
    const auto amount = readAmount(text);
    return amount && amount->isRange();
}

bool anyLine(const ComparedState& a, const ComparedState& b, auto has) {
    return std::ranges::any_of(a.document.lines, has) || std::ranges::any_of(b.document.lines, has);
}

bool dividesByMade(Basis basis, const ComparedState& state) {
    return basis == Basis::Piece ||
           (basis == Basis::Portion && state.document.portionPieces.has_value());
}

/// The rule that differs and has something to count.
std::string countedOtherwise(Basis basis, const ComparedState& a, const ComparedState& b) {
    const Counting& one = a.dossier.main().counting;
    const Counting& other = b.dossier.main().counting;
    if (one.toTaste != other.toTaste && anyLine(a, b, [](const auto& l) { return l.toTaste; }))
        return "lines to taste";
    if (one.optional != other.optional && anyLine(a, b, [](const auto& l) { return l.optional; }))
        return "optional lines";
    if (one.ranges != other.ranges &&
        anyLine(a, b, [](const auto& l) { return isRangeText(l.amount); }))
        return "ranges of amounts";
    if (one.makes != other.makes && (dividesByMade(basis, a) || dividesByMade(basis, b)) &&
        (isRangeText(a.document.pieces) || isRangeText(b.document.pieces)))
        return "ranges of pieces";
    return {};
}

std::string inSentence(Meaning meaning) {
    return (meaning == Meaning::RecipeMean ? "the " : "") + std::string{nameOf(meaning)};
}

std::optional<NotComparable> generalReason(Basis basis, const ComparedState& a,
                                           const ComparedState& b) {
    if (a.cooked.meaning != b.cooked.meaning)
        return NotComparable{
            WhyNotComparable::Meaning,
            inSentence(a.cooked.meaning) + ", the other of " + inSentence(b.cooked.meaning)};
    std::string rule = countedOtherwise(basis, a, b);
    if (rule.empty()) return std::nullopt;
    return NotComparable{WhyNotComparable::Counting, std::move(rule)};
}

void addNames(const Figure& figure, const Dossier& dossier, std::vector<std::string>& names) {
    for (const std::size_t food : figure.missingFoods) {
        const std::string& name = dossier.foods[food].name;
        if (std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
}

}  // namespace

Comparability::Comparability(const ComparedState& before, const Figures& figuresBefore,
                             const ComparedState& after, const Figures& figuresAfter)
    : before_{before},
      figuresBefore_{figuresBefore},
      after_{after},
      figuresAfter_{figuresAfter},
      general_{generalReason(figuresBefore.basis, before, after)} {}

std::optional<NotComparable> Comparability::ofResidues(Component component) const {
    const bool raw = figuresBefore_.beforeCooking || figuresAfter_.beforeCooking;
    for (const bool isAfter : {false, true}) {
        auto what = isAfter ? oneSidedResidue(component, raw, after_, before_)
                            : oneSidedResidue(component, raw, before_, after_);
        if (what)
            return NotComparable{
                WhyNotComparable::Residue, std::move(*what), {}, !isAfter, isAfter};
    }
    return std::nullopt;
}

/// Water is what a dish loses in cooking, whatever it is divided by.
std::optional<NotComparable> Comparability::ofCookedWeight(Component component) const {
    const bool before = before_.cooked.eaten.cooked.has_value();
    const bool after = after_.cooked.eaten.cooked.has_value();
    const bool matters = figuresBefore_.basis == Basis::Hundred || component == Component::WATER;
    if (before == after || !matters) return std::nullopt;
    return NotComparable{WhyNotComparable::CookedWeight, {}, {}, before, after};
}

std::optional<NotComparable> Comparability::ofMissing(Component component) const {
    const Figure& before = figuresBefore_[component];
    const Figure& after = figuresAfter_[component];
    if (before.complete() && after.complete()) return std::nullopt;
    NotComparable missing{
        WhyNotComparable::MissingParts, {}, {}, !before.complete(), !after.complete()};
    addNames(before, before_.dossier, missing.foods);
    addNames(after, after_.dossier, missing.foods);
    std::ranges::sort(missing.foods);
    return missing;
}

std::optional<NotComparable> Comparability::reasonAgainst(Component component) const {
    if (general_) return general_;
    if (auto reason = ofResidues(component)) return reason;
    if (auto reason = ofCookedWeight(component)) return reason;
    return ofMissing(component);
}

}  // namespace nettare
