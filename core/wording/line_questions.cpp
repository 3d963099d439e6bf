#include "core/wording/line_questions.h"

namespace nettare {

namespace {

/// What one measure leaves open.
struct OpenMeasure {
    LineField field;
    std::size_t index;
    const std::optional<Amount>& amount;
    const std::optional<AskedAmount>& asked;
    const std::vector<std::string_view>& units;
};

std::string rangeText(const Amount& amount) {
    const std::string low = writeFraction(amount.low());
    return amount.isRange() ? low + "-" + writeFraction(amount.high()) : low;
}

void ask(const OpenMeasure& open, std::vector<LineQuestion>& questions) {
    if (open.asked) {
        const auto& [decimal, grouped] = *open.asked;
        questions.push_back({open.field,
                             open.index,
                             decimal.text(),
                             {{LineMeaning::DecimalMark, rangeText(decimal)},
                              {LineMeaning::ThousandsMark, rangeText(grouped)}}});
    }
    if (open.units.size() < 2) return;
    const std::string written = open.asked    ? open.asked->decimal.text()
                                : open.amount ? open.amount->text()
                                              : std::string{};
    questions.push_back({open.field,
                         open.index,
                         written,
                         {{LineMeaning::WeightOunce, std::string{open.units[0]}},
                          {LineMeaning::FluidOunce, std::string{open.units[1]}}}});
}

void askAll(LineField field, const std::vector<LineMeasure>& measures,
            std::vector<LineQuestion>& questions) {
    for (std::size_t i = 0; i < measures.size(); ++i)
        ask({field, i, measures[i].amount, measures[i].asked, measures[i].units}, questions);
}

void decide(LineMeaning meaning, std::optional<Amount>& amount, std::optional<AskedAmount>& asked,
            std::vector<std::string_view>& units) {
    const bool ounce = meaning == LineMeaning::WeightOunce || meaning == LineMeaning::FluidOunce;
    if (ounce && units.size() == 2) {
        units = {units[meaning == LineMeaning::WeightOunce ? 0 : 1]};
    } else if (!ounce && asked) {
        amount = meaning == LineMeaning::DecimalMark ? asked->decimal : asked->grouped;
        asked.reset();
    }
}

}  // namespace

std::vector<LineQuestion> questionsOf(const LineReading& reading) {
    std::vector<LineQuestion> questions;
    ask({LineField::Amount, 0, reading.amount, reading.amountAsked, reading.units}, questions);
    askAll(LineField::Each, reading.each, questions);
    askAll(LineField::Equals, reading.equals, questions);
    return questions;
}

LineReading answered(LineReading reading, const LineQuestion& question, const LineChoice& choice) {
    if (question.field == LineField::Amount) {
        decide(choice.meaning, reading.amount, reading.amountAsked, reading.units);
        return reading;
    }
    auto& measures = question.field == LineField::Each ? reading.each : reading.equals;
    if (question.index < measures.size()) {
        LineMeasure& measure = measures[question.index];
        decide(choice.meaning, measure.amount, measure.asked, measure.units);
    }
    return reading;
}

}  // namespace nettare
