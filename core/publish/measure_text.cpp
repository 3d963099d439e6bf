#include "core/publish/measure_text.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "core/food/piece_word.h"
#include "core/quantity/decimal.h"

namespace nettare {

namespace {

/// Digits that a table would not have printed are cut off, trailing zeros too.
std::string withDecimals(double value, int decimals) {
    const Decimal step{1, -decimals};
    std::string text = roundedToStep(Decimal::fromDouble(value), step).text();
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

/// Decimals that leave so many significant digits.
int decimalsFor(double value, int significant) {
    if (value == 0) return 0;
    const int magnitude = static_cast<int>(std::floor(std::log10(std::fabs(value))));
    return std::clamp(significant - 1 - magnitude, 0, 9);
}

std::string unitWord(std::string_view unit) {
    return unit == "fl_oz" ? "fl oz" : std::string{unit};
}

}  // namespace

std::string shortNumber(double value) {
    return withDecimals(value, decimalsFor(value, 3));
}

std::string percent(double share) {
    return withDecimals(100 * share, std::min(1, decimalsFor(100 * share, 2))) + " %";
}

std::string measureText(const HouseholdMeasure& measure) {
    const std::string qualifier = measure.qualifier.empty() ? "" : ", " + measure.qualifier;
    return fmt::format("{} {}{} = {} g", withDecimals(measure.amount, 6), unitWord(measure.unit),
                       qualifier, withDecimals(measure.grams, 6));
}

std::string lineAmount(const Line& line) {
    if (line.unit != nullptr) return fmt::format("{} {}", line.amount.text(), line.unit->symbol);
    const bool one = line.amount.high().value() <= 1;
    return fmt::format("{} {}", line.amount.text(), one ? line.piece : pluralOf(line.piece));
}

}  // namespace nettare
