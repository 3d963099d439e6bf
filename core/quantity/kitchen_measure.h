#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/quantity/duration.h"
#include "core/quantity/gas_mark.h"
#include "core/quantity/length_text.h"
#include "core/quantity/temperature_text.h"

namespace nettare {

/// What a kitchen measures beside weights and volumes, each with its interval. Which one it is
/// follows from the unit alone; a time is never a temperature.
using KitchenMeasure = std::variant<TemperatureText, GasMarkText, LengthText, DurationText>;

/// The whole text as a temperature, a gas mark, a length or a time; nothing where it is none or
/// where something stands beside it. At most 80 bytes.
[[nodiscard]] std::optional<KitchenMeasure> readKitchenMeasure(std::string_view text);

/// What a reading means, a line for each: "350 °F = 176.67 °C", both where "180 degrees" must be
/// asked, the fan setting, the °C of a gas oven's dial, intervals of "about". Numbers with at most
/// two decimals.
[[nodiscard]] std::vector<std::string> kitchenMeasureLines(const KitchenMeasure& measure);

}  // namespace nettare
