#include "core/label/label_slip.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <string>

#include "core/label/eu_rounding.h"
#include "core/label/label_interval.h"
#include "core/label/lawful_energy.h"
#include "core/label/read_printed.h"
#include "core/label/us_rounding.h"
#include "core/support/text.h"

namespace nettare {

namespace {

using Kinds = unsigned;

/// How far honest labels lie from the usual method, as a share of the energy: the middle half of
/// SR28 by its own factors is within 4 % of 4-4-9; Annex XIV leaves nothing but rounding.
constexpr double kUsEnergySpread = 0.04;
constexpr double kEuEnergySpread = 0.01;
/// A figure that the rules round to, for one that none prints: what was meant, most likely.
constexpr double kNearestLawful = 2.0;
/// A second slip in the same label.
constexpr double kOtherFinding = 5.0;
/// A print that the guidance of the EU does not ask for.
constexpr double kBesideGuidance = 2.5;
/// The size of a serving is read twice, by weight and by measure.
constexpr double kServingSlip = 1.0;

Kinds kindBit(LabelFindingKind kind) {
    return Kinds{1} << static_cast<unsigned>(kind);
}

Kinds kindsOf(const std::vector<LabelClash>& clashes) {
    Kinds kinds = 0;
    for (const LabelClash& clash : clashes) kinds |= kindBit(clash.kind);
    return kinds;
}

/// What rounding leaves open in the sum of the lines that give energy, as a variance in kcal².
double roundingVariance(const LabelNumbers& numbers) {
    double variance = 0;
    const auto count = [&](CheckedLine line, double factor) {
        if (numbers[line]) variance += std::pow(factor * numbers[line]->width(), 2) / 12;
    };
    count(CheckedLine::Fat, 9);
    count(CheckedLine::Carbohydrate, 4);
    count(CheckedLine::Protein, 4);
    count(CheckedLine::Kilocalories, 1);
    return variance;
}

/// Distance to the nearest end; 0 within.
double outside(double value, Interval interval) {
    return value < interval.low    ? interval.low - value
           : value > interval.high ? value - interval.high
                                   : 0;
}

/// Half the square of a distance in units of its standard deviation.
double improbability(double distance, double variance) {
    return distance * distance / (2 * variance);
}

/// How badly the kilojoules go with the kilocalories and the rest, whose rounding is the same.
double kilojoulesOff(const LabelNumbers& numbers) {
    if (numbers.rules == LabelRules::Us || !numbers[CheckedLine::Kilojoules]) return 0;
    const auto then = euLawfulEnergy(numbers).kilojoulesThen;
    if (!then) return 0;
    const double spread = then->width() / 4 + 0.3;
    return improbability(numbers[CheckedLine::Kilojoules]->middle() - then->middle(),
                         spread * spread);
}

/// How badly the printed energy goes with the usual method: the distance in units of what rounding
/// and the choice of method leave open; 0 where the label does not say.
double energyOff(const LabelNumbers& numbers) {
    const auto usual = usualEnergy(numbers);
    const auto& kilocalories = numbers[CheckedLine::Kilocalories];
    const auto& kilojoules = numbers[CheckedLine::Kilojoules];
    if (!usual || (!kilocalories && !kilojoules)) return 0;
    const double printed =
        kilocalories ? numbers.printed[static_cast<std::size_t>(CheckedLine::Kilocalories)]
                     : kilojoules->middle() / 4.184;
    const double share = numbers.rules == LabelRules::Us ? kUsEnergySpread : kEuEnergySpread;
    const double method = share * std::max(printed, usual->high);
    return improbability(outside(printed, *usual),
                         roundingVariance(numbers) + method * method + 0.1);
}

/// 0 for a label whose energy is what its other lines usually make.
double disagreement(const LabelNumbers& numbers) {
    return energyOff(numbers) + kilojoulesOff(numbers);
}

/// The search for the slip behind one kind of finding.
struct SlipSearch {
    const LabelNumbers& numbers;
    const LabelSurroundings& surroundings;
    Kinds before;
    LabelFindingKind kind;
    std::optional<LabelSlip> best{};
    double least = 0;

    /// What is left open by the label with the slip put right, as a cost; nothing where it keeps
    /// the finding or gets another.
    [[nodiscard]] std::optional<double> leftOpen(const LabelNumbers& tried) const {
        const Kinds after = kindsOf(labelClashes(tried, surroundings));
        if ((after & ~before) != 0 || (after & kindBit(kind)) != 0) return std::nullopt;
        return kOtherFinding * std::popcount(after);
    }

    [[nodiscard]] bool isBetter(double unlikely) const { return !best || unlikely < least; }

    void tryLine(CheckedLine line);
    void tryAmount(CheckedLine line, const LabelAmount& amount, const PrintedAmount& instead,
                   const std::string& text, double unlikely);
    void tryServing();
};

/// Whether the one comma of the text is its decimal mark: the package is of a country that prints
/// it so.
bool hasDecimalComma(const std::string& printed, Decimal figure) {
    return figure.decimals() > 0 && printed.find(',') != std::string::npos &&
           printed.find('.') == std::string::npos;
}

/// The printed text with another figure: "<5 g" as "<0.5 g", "1,6 g" as "16 g" or "6,1 g" but "1,6
/// mg" as "1.625 mg", which a comma would make a thousand times as much. US labels drop zeros after
/// the point.
std::string withFigure(LabelRules rules, const std::string& printed, std::string_view unit,
                       Decimal instead) {
    std::string figure = (rules == LabelRules::Us ? withoutTrailingZeros(instead) : instead).text();
    const auto before = readPrinted(printed, unit);
    if (before && hasDecimalComma(printed, before->figure)) {
        const std::string commas = replaced(figure, ".", ",");
        const auto again = readPrinted(commas, unit);
        if (again && again->figure == instead) figure = commas;
    }
    constexpr std::string_view digits = "0123456789";
    const std::size_t first = printed.find_first_of(digits);
    const std::size_t last = printed.find_last_of(digits);
    return printed.substr(0, first) + figure + printed.substr(last + 1);
}

// The cheap costs first: most candidates are out before the label is checked again.
void SlipSearch::tryAmount(CheckedLine line, const LabelAmount& amount,
                           const PrintedAmount& instead, const std::string& text, double unlikely) {
    if (!isBetter(unlikely)) return;
    LabelNumbers tried = numbers;
    if (!tried.setLine(line, instead)) return;
    double cost = unlikely + disagreement(tried);
    if (!isBetter(cost)) return;
    const auto open = leftOpen(tried);
    if (!open) return;
    cost += *open;
    if (!isBetter(cost)) return;
    best = LabelSlip{amount.line, amount.printed, text};
    least = cost;
}

void SlipSearch::tryLine(CheckedLine line) {
    const LabelLine asked = labelLine(numbers.rules, line);
    const auto& amounts = surroundings.label.amounts;
    const auto amount = std::ranges::find(amounts, asked, &LabelAmount::line);
    if (amount == amounts.end()) return;
    const auto printed = readPrinted(amount->printed, unitOf(asked));
    if (!printed) return;
    const auto rule = numbers.rules == LabelRules::Eu ? euAmountRule(asked) : std::nullopt;
    for (const SlipCandidate& candidate : slipCandidates(printed->figure)) {
        const PrintedAmount instead{printed->lessThan, candidate.figure};
        const bool beside = rule && !amountsPrintedAs(*rule, instead);
        tryAmount(line, *amount, instead,
                  withFigure(numbers.rules, amount->printed, unitOf(asked), candidate.figure),
                  candidate.unlikely + (beside ? kBesideGuidance : 0));
    }
}

void SlipSearch::tryServing() {
    const auto& size = surroundings.label.servingSize;
    if (!size) return;
    for (const SlipCandidate& candidate : slipCandidates(*size)) {
        if (candidate.figure <= Decimal{}) continue;
        LabelNumbers tried = numbers;
        tried.setServing(surroundings.label, candidate.figure);
        const auto open = leftOpen(tried);
        if (!open) continue;
        const double cost = candidate.unlikely + kServingSlip + disagreement(numbers) + *open;
        if (!isBetter(cost)) continue;
        best = LabelSlip{std::nullopt, size->text(), withoutTrailingZeros(candidate.figure).text()};
        least = cost;
    }
}

}  // namespace

std::optional<LabelSlip> likelySlip(const LabelNumbers& numbers,
                                    const LabelSurroundings& surroundings,
                                    const std::vector<LabelClash>& clashes,
                                    const LabelClash& clash) {
    SlipSearch search{numbers, surroundings, kindsOf(clashes), clash.kind};
    for (const CheckedLine line : clash.lines) search.tryLine(line);
    if (clash.serving) search.tryServing();
    return search.best;
}

std::optional<LabelSlip> likelySlip(const LabelNumbers& numbers,
                                    const LabelSurroundings& surroundings,
                                    const std::vector<LabelClash>& clashes,
                                    const LabelAmount& unlawful) {
    const auto printed = readPrinted(unlawful.printed, unitOf(unlawful.line));
    if (!printed || printed->lessThan) return std::nullopt;
    const auto nearest = usAmountText(componentOf(unlawful.line).value_or(Component::SUGAR),
                                      printed->figure.value());
    const auto line = checkedLine(numbers.rules, unlawful.line);
    if (!line && nearest) return LabelSlip{unlawful.line, unlawful.printed, *nearest};
    if (!line) return std::nullopt;
    SlipSearch search{numbers, surroundings, kindsOf(clashes), LabelFindingKind::NotLawful};
    if (nearest)
        search.tryAmount(*line, unlawful, *readPrinted(*nearest, {}), *nearest, kNearestLawful);
    search.tryLine(*line);
    return search.best;
}

}  // namespace nettare
