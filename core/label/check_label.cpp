#include "core/label/check_label.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/label/check_label_clashes.h"
#include "core/label/label_interval.h"
#include "core/label/label_slip.h"

namespace nettare {

namespace {

/// Word by word: an assent ends as soon as one of its amounts changes.
bool isAssented(const LabelFacts& label, const LabelFinding& finding) {
    return std::ranges::find(label.assents, LabelAssent{finding.kind, finding.about}) !=
           label.assents.end();
}

/// "14 g", "1 cup = 240 mL"
std::string servingAbout(const LabelFacts& label) {
    std::string size = label.servingSize->text() + (label.servingInMillilitres ? " mL" : " g");
    if (!label.householdAmount) return size;
    return fmt::format("{} {} = {}", label.householdAmount->text(), label.householdUnit, size);
}

/// Before the slip is put in front, so that the text does not hang on what was thought likely.
std::string aboutOf(const LabelFacts& label, const LabelFinding& finding) {
    std::string about;
    for (const LabelLine& line : finding.lines)
        fmt::format_to(std::back_inserter(about), "{}{} {}", about.empty() ? "" : ", ",
                       tagnameOf(line), *label.printed(line));
    if (finding.serving)
        fmt::format_to(std::back_inserter(about), "{}{}", about.empty() ? "" : ", ",
                       servingAbout(label));
    return about;
}

/// The line that likely slipped is the one to look at first.
void markSlip(LabelFinding& finding) {
    if (!finding.slip || !finding.slip->line) return;
    const auto slipped = std::ranges::find(finding.lines, *finding.slip->line);
    if (slipped != finding.lines.end()) std::rotate(finding.lines.begin(), slipped, slipped + 1);
}

LabelFinding findingOf(const LabelFacts& label, const LabelClash& clash) {
    LabelFinding finding;
    finding.kind = clash.kind;
    finding.lines.reserve(clash.lines.size());
    for (const CheckedLine line : clash.lines)
        finding.lines.push_back(labelLine(label.rules, line));
    finding.serving = clash.serving;
    finding.says = clash.says;
    finding.others = clash.others;
    finding.unit = clash.unit;
    finding.about = aboutOf(label, finding);
    finding.impossible = clash.impossible;
    finding.assented = !finding.impossible && isAssented(label, finding);
    return finding;
}

/// Other lines that cannot be read are refused elsewhere, and make no finding.
bool isUnlawful(const LabelFacts& label, const LabelAmount& amount) {
    const auto interval = printedInterval(label.rules, amount.line, amount.printed);
    return !interval && interval.error().code == ErrorCode::LabelAmountImpossible;
}

}  // namespace

std::vector<LabelFinding> checkLabel(const LabelFacts& label,
                                     const std::optional<LikeDensity>& like) {
    const LabelNumbers numbers = labelNumbers(label);
    const LabelSurroundings surroundings{label, measureSize(label), like};
    const std::vector<LabelClash> clashes = labelClashes(numbers, surroundings);
    std::vector<LabelFinding> findings;
    for (const LabelAmount& amount : label.amounts) {
        if (!isUnlawful(label, amount)) continue;
        LabelFinding finding;
        finding.kind = LabelFindingKind::NotLawful;
        finding.lines = {amount.line};
        finding.about = notLawfulAbout(amount);
        finding.assented = isAssented(label, finding);
        finding.slip = likelySlip(numbers, surroundings, clashes, amount);
        findings.push_back(std::move(finding));
    }
    for (const LabelClash& clash : clashes) {
        findings.push_back(findingOf(label, clash));
        findings.back().slip = likelySlip(numbers, surroundings, clashes, clash);
        markSlip(findings.back());
        if (like && clash.kind == LabelFindingKind::UnlikeMeasure) findings.back().like = like->of;
    }
    return findings;
}

LabelFacts withSlip(const LabelFacts& label, const LabelSlip& slip) {
    LabelFacts right = label;
    if (!slip.line) {
        if (const auto size = Decimal::read(slip.instead)) right.servingSize = *size;
        return right;
    }
    for (LabelAmount& amount : right.amounts)
        if (amount.line == *slip.line) amount.printed = slip.instead;
    return right;
}

LabelFacts withAssent(const LabelFacts& label, const LabelFinding& finding) {
    LabelFacts assented = label;
    if (!finding.impossible && !isAssented(label, finding))
        assented.assents.push_back({finding.kind, finding.about});
    return assented;
}

}  // namespace nettare
