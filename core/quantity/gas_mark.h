#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/quantity/temperature_text.h"

namespace nettare {

/// One mark of a British gas oven's dial (common practice; published tables agree but for a dial's
/// tens of degrees). From mark 1 on it is 25 x mark + 250 °F.
struct GasMark {
    int numerator, denominator;  ///< of the mark: 1/4, 1/2, 1 to 9
    int fahrenheit;
    int dialLowCelsius, dialHighCelsius;  ///< what dials in °C print for it; equal where they agree

    [[nodiscard]] Fraction mark() const { return *Fraction::make(numerator, denominator); }
    /// Exact conversion of the °F, no dial: mark 4 is 176.67 °C.
    [[nodiscard]] Fraction celsius() const;
    [[nodiscard]] Temperature temperature() const {
        return Temperature::fromFahrenheit(fahrenheit);
    }
};

/// From 1/4 to 9, ascending.
[[nodiscard]] std::span<const GasMark> allGasMarks();
/// Null for a mark that the dial does not have.
[[nodiscard]] const GasMark* findGasMark(Fraction mark);

/// A gas mark as typed; two where a range was. Never null.
struct GasMarkText {
    const GasMark* low;
    const GasMark* high;
    bool about = false;

    [[nodiscard]] TemperatureRange range() const {
        return {low->temperature(), high->temperature()};
    }
};

/// "gas mark 4", "Gas 1/2", "gas mark ½", "gas mark 5-6", "gas 4 to 5", "mark 4". Nothing for other
/// texts and for marks that there are not.
[[nodiscard]] std::optional<GasMarkText> readGasMark(std::string_view text);

}  // namespace nettare
