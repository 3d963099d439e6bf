#include "core/wording/line_meanings.h"

#include "core/wording/line_questions.h"

namespace nettare {

namespace {

/// Numbers in plain fractions: the text of one that was asked can be read both ways.
std::string measureText(const std::optional<Amount>& amount,
                        const std::vector<std::string_view>& units) {
    std::string text = amount ? writeFraction(amount->low()) : "";
    if (amount && amount->isRange()) text += "-" + writeFraction(amount->high());
    if (!units.empty()) (text += text.empty() ? "" : " ") += units.front();
    return text;
}

}  // namespace

std::vector<LineReading> meaningsOf(const LineReading& reading) {
    std::vector<LineReading> meanings;
    for (const LineQuestion& question : questionsOf(reading)) {
        if (question.field == LineField::Equals) continue;
        for (const LineChoice& choice : question.choices)
            meanings.push_back(answered(reading, question, choice));
        return meanings;
    }
    return {reading};
}

std::string meaningText(const LineReading& meaning) {
    if (!meaning.each.empty() && meaning.units.empty())
        return measureText(meaning.each.front().amount, meaning.each.front().units);
    return measureText(meaning.amount, meaning.units);
}

}  // namespace nettare
