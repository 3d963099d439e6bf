#include "core/quantity/kitchen_measure.h"

#include "core/support/text.h"

namespace nettare {

std::optional<KitchenMeasure> readKitchenMeasure(std::string_view text) {
    std::string_view clean = trimmed(text);
    if (clean.empty() || clean.size() > 80) return std::nullopt;
    if (auto mark = readGasMark(clean)) return *mark;
    if (auto temperature = readTemperature(clean)) return std::move(*temperature);
    if (auto length = readLength(clean)) return std::move(*length);
    if (auto time = readDuration(clean)) return *time;
    return std::nullopt;
}

}  // namespace nettare
