#include "core/publish/label_sentence.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "core/label/check_label_numbers.h"
#include "core/label/label_lines.h"
#include "core/label/lawful_energy.h"
#include "core/label/print_rule.h"
#include "core/label/read_printed.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostShown = 60;  ///< characters of a word that the cook wrote
/// Stands for "as much as you like" where a label does not say what it is of.
constexpr double kNoBound = 1e5;

/// Whole kcal and kJ from ten on, but for the halves of a rounding; else two decimals, three below
/// one, without zeros at the end.
std::string shortAmount(std::string_view unit, double value) {
    const bool energy = unit == "kcal" || unit == "kJ";
    const bool whole = energy && value >= 10 && std::fmod(value, 0.5) != 0;
    const int decimals = whole ? 0 : value < 1 && unit == "g" ? 3 : 2;
    return printedDecimal(
        withoutTrailingZeros(roundedToStep(Decimal::fromDouble(value), {1, -decimals})));
}

/// "308 to 320"
std::string betweenText(std::string_view unit, Interval interval) {
    const std::string low = shortAmount(unit, interval.low);
    if (interval.high >= kNoBound) return "at least " + low;
    const std::string high = shortAmount(unit, interval.high);
    return low == high ? low : low + " to " + high;
}

/// "Saturated Fat", "sugars": without the words that tie a line to the one above it.
std::string calledText(LabelRules rules, const LabelLine& line) {
    const PrintedLine* printed = printedLine(rules, line);
    if (printed == nullptr) return std::string{nameOf(line)};
    std::string_view called = printed->called;
    for (const std::string_view opening : {"of which ", "Includes "})
        if (called.starts_with(opening)) called.remove_prefix(opening.size());
    return std::string{called};
}

/// "Protein 18 g"; the unit once, whether or not it was typed.
std::string amountText(LabelRules rules, const LabelLine& line, std::string_view printed) {
    const PrintedLine* known = printedLine(rules, line);
    const std::string_view unit = known != nullptr ? known->unit : unitOf(line);
    const std::string text = shortened(trimmed(printed), kMostShown);
    const bool bare = !text.empty() && text.back() >= '0' && text.back() <= '9';
    return fmt::format("{} {}{}{}", calledText(rules, line), text, bare && !unit.empty() ? " " : "",
                       bare ? unit : "");
}

std::string listed(const std::vector<std::string>& parts) {
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i)
        fmt::format_to(std::back_inserter(text), "{}{}",
                       i == 0                  ? ""
                       : i + 1 == parts.size() ? " and "
                                               : ", ",
                       parts[i]);
    return text;
}

bool isEnergy(const LabelLine& line) {
    return line == LabelLine{Component::ENERC_KCAL} || line == LabelLine{Component::ENERC_KJ};
}

/// A finding of a label on the way to words.
struct FindingInWords {
    const LabelFacts& label;
    const LabelFinding& finding;

    [[nodiscard]] std::string amount(const LabelLine& line) const {
        return amountText(label.rules, line, *label.printed(line));
    }
    /// All lines but one and, unless `withEnergy`, energies, in the order of the label; zeros only
    /// where there is nothing else.
    [[nodiscard]] std::vector<std::string> amountsBut(const std::optional<LabelLine>& left,
                                                      bool withEnergy = false) const;
    [[nodiscard]] bool prints(const LabelLine& line) const {
        return label.printed(line) != nullptr;
    }
    [[nodiscard]] std::string others() const { return betweenText(finding.unit, finding.others); }
    [[nodiscard]] std::string says() const { return betweenText(finding.unit, finding.says); }
};

std::vector<std::string> FindingInWords::amountsBut(const std::optional<LabelLine>& left,
                                                    bool withEnergy) const {
    std::vector<std::string> amounts;
    std::vector<std::string> zeros;
    for (const PrintedLine& line : printedLines(label.rules)) {
        const auto& lines = finding.lines;
        if (line.line == left || std::ranges::find(lines, line.line) == lines.end()) continue;
        if (isEnergy(line.line) && !withEnergy) continue;
        const auto read = readPrinted(*label.printed(line.line), unitOf(line.line));
        const bool zero = read && read->figure == Decimal{};
        (zero ? zeros : amounts).push_back(amount(line.line));
    }
    return amounts.empty() ? zeros : amounts;
}

/// Whether the energy that is too much fits into the weight that no line takes, as alcohol of 7
/// kcal/g.
bool alcoholFits(const FindingInWords& told) {
    const LabelNumbers numbers = labelNumbers(told.label);
    if (!numbers.grams) return true;
    double rest = numbers.grams->high;
    for (const CheckedLine line :
         {CheckedLine::Fat, CheckedLine::Carbohydrate, CheckedLine::Protein})
        if (numbers[line]) rest -= numbers[line]->low;
    return told.finding.says.low - told.finding.others.high <= 7 * rest;
}

/// Whether carbohydrate without any energy would explain what is too little.
bool emptyCarbohydrateFits(const FindingInWords& told) {
    const LabelNumbers numbers = labelNumbers(told.label);
    const auto& carbohydrate = numbers[CheckedLine::Carbohydrate];
    return !carbohydrate ||
           told.finding.others.low - told.finding.says.high <= 4 * carbohydrate->high;
}

/// What the label need not print and what could still be the reason; empty where nothing is.
std::string unprintedText(const FindingInWords& told) {
    const bool eu = told.label.rules == LabelRules::Eu;
    const bool more = told.finding.says.low > told.finding.others.high;
    // What is not printed would show in both energies.
    if (eu && told.finding.unit == "kJ" && told.prints(Component::ENERC_KCAL)) return {};
    const bool counted = told.prints(Component::ALC) || mayHideAlcohol(labelNumbers(told.label));
    if (more && (counted || !alcoholFits(told))) return {};
    if (more)
        return eu ? " Or has it organic acids or alcohol that it does not print?"
                  : " Or has it alcohol that it does not print?";
    if (told.prints(LabelOnly::POLYL) || !emptyCarbohydrateFits(told)) return {};
    return eu ? " Or has it polyols that it does not print?"
              : " Or has it sugar alcohols that it does not print, much acid, or a sweetener with "
                "a "
                "factor of its own?";
}

/// Imported labels often convert kilojoules instead of counting them by their own factors.
bool isConverted(const FindingInWords& told) {
    const std::string* kilocalories = told.label.printed(Component::ENERC_KCAL);
    if (kilocalories == nullptr || told.finding.unit != "kJ") return false;
    const auto read = readPrinted(*kilocalories, unitOf(Component::ENERC_KCAL));
    return read && std::fabs(told.finding.says.middle() - 4.184 * read->figure.value()) <= 2.6;
}

std::string energyText(const FindingInWords& told) {
    const std::vector<std::string> parts = told.amountsBut(std::nullopt);
    const std::string_view unit = told.finding.unit;
    if (parts.empty()) return fmt::format("Nothing of that weight has {} {}.", told.says(), unit);
    return fmt::format("{} {} {} {}; the label says {}.", listed(parts),
                       parts.size() == 1 ? "makes" : "make", told.others(), unit, told.says());
}

/// Where the kilojoules go with the kilocalories, and only the lines are of another kind.
std::string unprintedKilojoulesText(const FindingInWords& told) {
    const LabelNumbers numbers = labelNumbers(told.label);
    const bool linesToo = told.finding.lines.size() > 2;
    if (!linesToo || numbers[CheckedLine::Alcohol] || mayHideAlcohol(numbers)) return {};
    return told.finding.says.low > told.finding.others.high
               ? " Or has it organic acids that it does not print?"
               : " Or has it alcohol that it does not print?";
}

std::string kilojoulesText(const FindingInWords& told) {
    const std::string text = fmt::format(
        "{} {} {} kJ; the label says {}.", listed(told.amountsBut(Component::ENERC_KJ, true)),
        told.finding.lines.size() == 2 ? "is" : "are together", told.others(), told.says());
    if (isConverted(told)) return text + " It is 4.184 × the kilocalories.";
    return text + unprintedKilojoulesText(told);
}

std::string partsText(const FindingInWords& told, const LabelLine& whole) {
    const auto parts = told.amountsBut(whole);
    if (parts.size() == 1)
        return fmt::format("{} is more than {}.", parts.front(), told.amount(whole));
    return fmt::format("{} are {} g together, more than {}.", listed(parts), told.others(),
                       told.amount(whole));
}

std::string weightText(const FindingInWords& told) {
    return fmt::format("{} {} at least {} g, and the {} is {} g.",
                       listed(told.amountsBut(std::nullopt)),
                       told.finding.lines.size() == 1 ? "weighs" : "weigh",
                       shortAmount("g", told.finding.others.low),
                       told.finding.serving ? "serving" : "amount they are of", told.says());
}

std::string unlikeMeasureText(const FindingInWords& told) {
    const std::string serving = shortened(labelServingText(told.label), kMostShown);
    if (told.finding.unit != "g per mL")
        return fmt::format("{}: such a measure holds {} {}.", serving, told.others(),
                           told.finding.unit);
    if (told.finding.like.empty())
        return fmt::format("{} makes {} g per mL; foods have {}.", serving, told.says(),
                           told.others());
    return fmt::format("{} makes {} g per mL; {} have {}.", serving, told.says(),
                       shortened(told.finding.like, kMostShown), told.others());
}

std::string slipText(const FindingInWords& told) {
    if (!told.finding.slip) return {};
    const LabelSlip& slip = *told.finding.slip;
    if (slip.line)
        return fmt::format(" Was it {}?", amountText(told.label.rules, *slip.line, slip.instead));
    return fmt::format(" Was it {} {}?", slip.instead,
                       told.label.servingInMillilitres ? "mL" : "g");
}

std::string clashText(const FindingInWords& told) {
    switch (told.finding.kind) {
        case LabelFindingKind::NotLawful:
            return fmt::format("No rounding of the rules prints {}.",
                               told.amount(told.finding.lines.front()));
        case LabelFindingKind::Energy:
            return energyText(told) + (isConverted(told) ? " It is 4.184 × the kilocalories." : "");
        case LabelFindingKind::KilojoulesDiffer:
            return kilojoulesText(told);
        case LabelFindingKind::FatParts:
            return partsText(told, Component::FAT);
        case LabelFindingKind::CarbohydrateParts:
            return told.prints(LabelOnly::CHOAVL) && told.label.rules == LabelRules::Eu
                       ? partsText(told, LabelOnly::CHOAVL)
                       : partsText(told, Component::CHOCDF);
        case LabelFindingKind::AddedSugars:
            return partsText(told, Component::SUGAR);
        case LabelFindingKind::SaltDiffers:
            return fmt::format("{} makes {} g of salt; the label says {}.",
                               told.amount(Component::NA), told.others(), told.says());
        case LabelFindingKind::TooHeavy:
            return weightText(told);
        case LabelFindingKind::UnlikeMeasure:
            return unlikeMeasureText(told);
    }
    return {};
}

}  // namespace

std::string findingSentence(const LabelFacts& label, const LabelFinding& finding) {
    const FindingInWords told{label, finding};
    const std::string text =
        clashText(told) +
        (finding.impossible ? " No food is so: correct it, or leave that line out." : "") +
        slipText(told);
    return finding.kind == LabelFindingKind::Energy ? text + unprintedText(told) : text;
}

std::string intervalText(const DecimalInterval& interval) {
    std::string low = printedDecimal(withoutTrailingZeros(interval.low));
    const std::string high = printedDecimal(withoutTrailingZeros(interval.high));
    if (interval.low == interval.high) return low;
    if (interval.low == Decimal{} && interval.lowIncluded && !interval.highIncluded)
        return "< " + high;
    return low + "–" + high;
}

}  // namespace nettare
