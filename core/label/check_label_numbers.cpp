#include "core/label/check_label_numbers.h"

#include "core/label/label_interval.h"
#include "core/label/label_lines.h"
#include "core/label/read_printed.h"

namespace nettare {

namespace {

using enum Component;

struct CheckedRow {
    CheckedLine checked;
    LabelLine us, eu;
};

/// In the order of CheckedLine, which labelLine() relies on.
constexpr std::array<CheckedRow, kCheckedLineCount> kCheckedRows{{
    {CheckedLine::Kilocalories, ENERC_KCAL, ENERC_KCAL},
    {CheckedLine::Kilojoules, ENERC_KJ, ENERC_KJ},
    {CheckedLine::Fat, FAT, FAT},
    {CheckedLine::Saturates, FASAT, FASAT},
    {CheckedLine::Trans, FATRN, FATRN},
    {CheckedLine::Mono, FAMS, FAMS},
    {CheckedLine::Poly, FAPU, FAPU},
    {CheckedLine::Carbohydrate, CHOCDF, LabelOnly::CHOAVL},
    {CheckedLine::Fibre, FIBTG, FIBTG},
    {CheckedLine::Sugars, SUGAR, SUGAR},
    {CheckedLine::AddedSugars, SUGAD, SUGAD},
    {CheckedLine::Polyols, LabelOnly::POLYL, LabelOnly::POLYL},
    {CheckedLine::Starch, LabelOnly::STARCH, LabelOnly::STARCH},
    {CheckedLine::Protein, PROCNT, PROCNT},
    {CheckedLine::Salt, LabelOnly::NACL, LabelOnly::NACL},
    {CheckedLine::Sodium, NA, NA},
    {CheckedLine::Alcohol, ALC, ALC},
}};

/// The grams of that many millilitres, or of grams themselves.
std::optional<Interval> gramsOf(const LabelFacts& label, Interval size, bool millilitres) {
    if (!millilitres) return size;
    if (!label.density) return std::nullopt;
    const double density = label.density->gramsPerMl.value();
    const double within = label.density->within.value();
    return Interval{size.low * (density - within), size.high * (density + within)};
}

}  // namespace

std::optional<CheckedLine> checkedLine(LabelRules rules, const LabelLine& line) {
    if (printedLine(rules, line) == nullptr) return std::nullopt;
    for (const CheckedRow& row : kCheckedRows)
        if ((rules == LabelRules::Us ? row.us : row.eu) == line) return row.checked;
    return std::nullopt;
}

LabelLine labelLine(LabelRules rules, CheckedLine line) {
    const CheckedRow& row = kCheckedRows.at(static_cast<std::size_t>(line));
    return rules == LabelRules::Us ? row.us : row.eu;
}

bool LabelNumbers::isMoreThanAll(CheckedLine line) const {
    const auto& amount = (*this)[line];
    return amount && grams && unitOf(labelLine(rules, line)) == "g" &&
           amount->low > grams->high + kSameGrams;
}

// What no rounding prints still takes part in the other checks, as far as its digits say.
bool LabelNumbers::setLine(CheckedLine line, const PrintedAmount& amount) {
    const auto lawful = amountsPrintedAs(rules, labelLine(rules, line), amount);
    const Interval interval = lawful.value_or(asWritten(amount)).closed();
    lines[static_cast<std::size_t>(line)] = interval;
    printed[static_cast<std::size_t>(line)] =
        amount.lessThan ? interval.middle() : amount.figure.value();
    return lawful.has_value();
}

void LabelNumbers::setServing(const LabelFacts& label, Decimal size) {
    serving = servingInterval(rules, size).closed();
    if (perServing) grams = gramsOf(label, *serving, label.servingInMillilitres);
}

std::optional<Interval> gramsHeld(const LabelFacts& label) {
    if (label.per != LabelPer::Serving)
        return gramsOf(label, {100, 100}, label.per == LabelPer::HundredMillilitres);
    if (!label.servingSize) return std::nullopt;
    const Interval size = servingInterval(label.rules, *label.servingSize).closed();
    return gramsOf(label, size, label.servingInMillilitres);
}

LabelNumbers labelNumbers(const LabelFacts& label) {
    LabelNumbers numbers;
    numbers.rules = label.rules;
    numbers.perServing = label.per == LabelPer::Serving;
    numbers.ofVolume = label.needsDensity();
    numbers.grams = gramsHeld(label);
    if (label.servingSize) numbers.setServing(label, *label.servingSize);
    for (const LabelAmount& amount : label.amounts) {
        const auto line = checkedLine(label.rules, amount.line);
        const auto printed = readPrinted(amount.printed, unitOf(amount.line));
        if (line && printed) numbers.setLine(*line, *printed);
    }
    return numbers;
}

}  // namespace nettare
