#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/quantity/fraction.h"
#include "core/quantity/temperature.h"

namespace nettare {

enum class TemperatureScale { Celsius, Fahrenheit };

/// Exact: °C = 5/9 (°F - 32) (NIST SP 811, B.8). Nothing where the result leaves 64 bits.
[[nodiscard]] std::optional<Fraction> celsiusOf(Fraction fahrenheit);
[[nodiscard]] std::optional<Fraction> fahrenheitOf(Fraction celsius);

/// Temperatures between two ends, low <= high.
struct TemperatureRange {
    Temperature low;
    Temperature high;
};

/// What a typed temperature says in one scale, exactly in both; low <= high.
struct TemperatureMeaning {
    TemperatureScale scale;  ///< the scale it was typed in
    Fraction lowCelsius, highCelsius;
    Fraction lowFahrenheit, highFahrenheit;
};

/// A temperature as kitchens write it.
struct TemperatureText {
    /// One, or both where the scale was not said: "180 degrees" is to be asked.
    std::vector<TemperatureMeaning> meanings;
    bool about = false;
    bool fan = false;  ///< said of an oven whose fan runs

    [[nodiscard]] bool mustBeAsked() const { return meanings.size() > 1; }
    /// The ends of one meaning; "about" widens them by 10 K on either side (decision of ours).
    [[nodiscard]] TemperatureRange range(const TemperatureMeaning& meaning) const;
};

/// "180 °C", "350F", "350 degrees F", "-18 °C", "180-190 °C", "about 75 °C", "160 °C fan", "180
/// degrees". Nothing for other texts, for what lies below absolute zero or above 2000 degrees, and
/// for what stands beside a temperature.
[[nodiscard]] std::optional<TemperatureText> readTemperature(std::string_view text);

/// What an oven with a running fan is set to instead of `conventional`: 20 to 25 K lower (common
/// practice; books and makers differ).
[[nodiscard]] TemperatureRange fanSettingFor(Temperature conventional);
/// The conventional setting that a fan setting stands for: 20 to 25 K higher.
[[nodiscard]] TemperatureRange conventionalFor(Temperature fanSetting);

/// Which side of a temperature is safe.
enum class SafetyLimit {
    AtLeast,  ///< poultry to 165 °F: rounded up
    AtMost,   ///< a refrigerator at 40 °F: rounded down
};

/// A safety limit in whole degrees, never rounded to the unsafe side: 165 °F are 73.89 °C, shown as
/// 74 °C; 40 °F are 4.44 °C, shown as 4 °C.
[[nodiscard]] std::int64_t safeWholeDegrees(Fraction degrees, SafetyLimit limit);

}  // namespace nettare
