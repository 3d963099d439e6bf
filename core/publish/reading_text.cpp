#include "core/publish/reading_text.h"

#include <fmt/core.h>

#include "core/quantity/amount.h"

namespace nettare {

namespace {

void addRow(std::string& text, std::string_view name, std::string_view value) {
    if (!value.empty()) text += fmt::format("  {:<13}{}\n", name, value);
}

std::string valueText(const Amount& amount) {
    const std::string low = writeFraction(amount.low());
    return amount.isRange() ? low + " to " + writeFraction(amount.high()) : low;
}

std::string askedNumberText(const std::optional<Amount>& amount,
                            const std::optional<AskedAmount>& asked) {
    if (amount) return valueText(*amount);
    if (!asked) return {};
    return fmt::format("{} or {}? (“{}” can be read both ways)", valueText(asked->decimal),
                       valueText(asked->grouped), asked->decimal.text());
}

std::string unitText(const std::vector<std::string_view>& units) {
    std::string text;
    for (const std::string_view unit : units) (text += text.empty() ? "" : " or ") += unit;
    return units.size() > 1 ? text + "?" : text;
}

std::string measureText(const LineMeasure& measure) {
    const std::string unit = unitText(measure.units);
    return askedNumberText(measure.amount, measure.asked) + (unit.empty() ? "" : " " + unit);
}

void addFlags(std::string& text, const LineReading& reading) {
    const std::pair<bool, std::string_view> flags[] = {
        {reading.optional, "optional"},
        {reading.toTaste, "to taste"},
        {reading.plusMore, "plus more"},
        {reading.about, "about"},
        {reading.assumed, "a manner of speaking, assumed"}};
    std::string all;
    for (const auto& [set, word] : flags)
        if (set) (all += all.empty() ? "" : ", ") += word;
    addRow(text, "marked", all);
}

}  // namespace

std::string readingText(const LineReading& reading) {
    std::string text;
    addRow(text, "amount", askedNumberText(reading.amount, reading.amountAsked));
    addRow(text, "unit", unitText(reading.units));
    addRow(text, "piece", reading.piece);
    for (const LineMeasure& each : reading.each) addRow(text, "each", measureText(each));
    for (const LineMeasure& equals : reading.equals) addRow(text, "equals", measureText(equals));
    addRow(text, "size", reading.size);
    addRow(text, "filled", reading.fill);
    addRow(text, "food", reading.food);
    addRow(text, "preparation", reading.preparation);
    addRow(text, "or", reading.alternative);
    addFlags(text, reading);
    for (const std::string& rest : reading.rest) addRow(text, "not read", rest);
    return text;
}

}  // namespace nettare
