#include <cmath>

#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"
#include "core/quantity/kitchen_measure.h"

namespace nettare {

namespace {

using Lines = std::vector<std::string>;

/// At most two decimals, ties up; no zeros behind the last digit that says something.
std::string plainNumber(double value) {
    const Decimal rounded = roundedToStep(Decimal::fromDouble(std::fabs(value)), {1, -2});
    std::string text = rounded.text();
    while (text.ends_with('0')) text.pop_back();
    if (text.ends_with('.')) text.pop_back();
    return (value < 0 && text != "0" ? "−" : "") + text;
}

/// "180", "180 to 190".
std::string ends(double low, double high) {
    const std::string first = plainNumber(low);
    const std::string last = plainNumber(high);
    return first == last ? first : first + " to " + last;
}

std::string rangeText(const TemperatureRange& range, TemperatureScale scale) {
    return scale == TemperatureScale::Celsius
               ? ends(range.low.celsius(), range.high.celsius()) + " °C"
               : ends(range.low.fahrenheit(), range.high.fahrenheit()) + " °F";
}

std::string meaningText(const TemperatureMeaning& meaning) {
    const std::string celsius =
        ends(meaning.lowCelsius.value(), meaning.highCelsius.value()) + " °C";
    const std::string fahrenheit =
        ends(meaning.lowFahrenheit.value(), meaning.highFahrenheit.value()) + " °F";
    return meaning.scale == TemperatureScale::Celsius ? celsius + " = " + fahrenheit
                                                      : fahrenheit + " = " + celsius;
}

/// What the same heat is set to in an oven of the other kind; empty below 100 °C, where roasts are
/// meant and no ovens.
std::string ovenLine(const TemperatureMeaning& meaning, const TemperatureRange& range, bool fan) {
    if (meaning.lowCelsius < Fraction{100}) return {};
    const TemperatureRange low = fan ? conventionalFor(range.low) : fanSettingFor(range.low);
    const TemperatureRange high = fan ? conventionalFor(range.high) : fanSettingFor(range.high);
    return std::string{"as an oven's setting, "} + (fan ? "without the fan " : "with a fan ") +
           rangeText({low.low, high.high}, meaning.scale) +
           " (common practice; follow the oven's maker)";
}

/// Whole degrees of the other scale to the safe side; empty where it is whole itself, and for
/// ovens.
std::string safeLine(const TemperatureMeaning& meaning) {
    const bool typedCelsius = meaning.scale == TemperatureScale::Celsius;
    const Fraction other = typedCelsius ? meaning.lowFahrenheit : meaning.lowCelsius;
    if (other.denominator() == 1 || meaning.lowCelsius >= Fraction{100}) return {};
    const auto whole = [&](SafetyLimit limit) {
        return plainNumber(static_cast<double>(safeWholeDegrees(other, limit))) +
               (typedCelsius ? " °F" : " °C");
    };
    return "as a limit that food must reach: at least " + whole(SafetyLimit::AtLeast) +
           "; that it must stay below: at most " + whole(SafetyLimit::AtMost);
}

Lines linesOf(const TemperatureText& temperature) {
    Lines lines;
    const auto add = [&](std::string line) {
        if (!line.empty()) lines.push_back(std::move(line));
    };
    if (temperature.mustBeAsked()) add("the scale is not said, it could be either of these:");
    for (const TemperatureMeaning& meaning : temperature.meanings) {
        const TemperatureRange range = temperature.range(meaning);
        add(meaningText(meaning));
        if (temperature.about) add("“about” stands for " + rangeText(range, meaning.scale));
        add(ovenLine(meaning, range, temperature.fan));
        add(safeLine(meaning));
    }
    return lines;
}

std::string markText(const GasMark& mark) {
    return "gas mark " + writeFraction(mark.mark()) + " = " + std::to_string(mark.fahrenheit) +
           " °F = " + plainNumber(mark.celsius().value()) + " °C; dials say " +
           ends(mark.dialLowCelsius, mark.dialHighCelsius) + " °C (common practice)";
}

Lines linesOf(const GasMarkText& mark) {
    if (mark.low == mark.high) return {markText(*mark.low)};
    return {markText(*mark.low), markText(*mark.high)};
}

Lines linesOf(const LengthText& length) {
    Lines lines{ends(length.low.millimetres(), length.high.millimetres()) + " mm"};
    const Interval wide = length.millimetres();
    if (length.about) lines.push_back("“about” stands for " + ends(wide.low, wide.high) + " mm");
    return lines;
}

/// Minutes, below one of them seconds.
std::string timeText(double low_s, double high_s) {
    return high_s < 60 ? ends(low_s, high_s) + " s" : ends(low_s / 60, high_s / 60) + " min";
}

Lines linesOf(const DurationText& time) {
    Lines lines{timeText(time.low.seconds(), time.high.seconds())};
    const Interval wide = time.seconds();
    if (time.about) lines.push_back("“about” stands for " + timeText(wide.low, wide.high));
    return lines;
}

}  // namespace

Lines kitchenMeasureLines(const KitchenMeasure& measure) {
    return std::visit([](const auto& read) { return linesOf(read); }, measure);
}

}  // namespace nettare
