#include "core/wording/line_meanings.h"

namespace nettare {

namespace {

/// An amount without its own text, which could be read both ways.
Amount plainly(const Amount& amount) {
    return {amount.low(), amount.high(), writeFraction(amount.low())};
}

std::string measureText(const std::optional<Amount>& amount,
                        const std::vector<std::string_view>& units) {
    std::string text = amount ? amount->text() : "";
    if (!units.empty()) (text += text.empty() ? "" : " ") += units.front();
    return text;
}

}  // namespace

std::vector<LineReading> meaningsOf(const LineReading& reading) {
    std::vector<LineReading> meanings;
    const auto add = [&](auto settle) {
        meanings.push_back(reading);
        settle(meanings.back());
    };
    if (reading.amountAsked)
        for (const Amount& amount : {reading.amountAsked->decimal, reading.amountAsked->grouped})
            add([&](LineReading& meaning) {
                meaning.amountAsked.reset();
                meaning.amount = plainly(amount);
            });
    else if (reading.units.size() > 1)
        for (const std::string_view unit : reading.units)
            add([&](LineReading& meaning) { meaning.units = {unit}; });
    else if (!reading.each.empty() && reading.each.front().asked)
        for (const AskedAmount asked = *reading.each.front().asked;
             const Amount& amount : {asked.decimal, asked.grouped})
            add([&](LineReading& meaning) {
                meaning.each.front().asked.reset();
                meaning.each.front().amount = plainly(amount);
            });
    else if (!reading.each.empty() && reading.each.front().units.size() > 1)
        for (const std::string_view unit : reading.each.front().units)
            add([&](LineReading& meaning) { meaning.each.front().units = {unit}; });
    else
        meanings.push_back(reading);
    return meanings;
}

std::string meaningText(const LineReading& meaning) {
    if (!meaning.each.empty() && meaning.units.empty())
        return measureText(meaning.each.front().amount, meaning.each.front().units);
    return measureText(meaning.amount, meaning.units);
}

}  // namespace nettare
