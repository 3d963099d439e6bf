#include "core/nutrition/state_weighed.h"

#include <algorithm>

#include "core/food/food_state.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

/// Whether what the way rests on was on the scale as cooked food.
bool wasWeighedCooked(const Dossier& dossier, const Line& line, const OpenWay& way) {
    const auto cooked = [&](std::size_t reading) {
        return stateOf(dossier, reading) == WeighedState::Cooked;
    };
    if (way.way == Way::Weighed) return std::ranges::any_of(line.weighed, cooked);
    return way.way == Way::Series && cooked(dossier.series[line.series->series].readings.front());
}

}  // namespace

std::optional<FoodState> stateWeighed(const Dossier& dossier, const Line& line,
                                      const OpenWay& way) {
    if (way.yielded) return line.yield->to;
    if (line.state == FoodState::WithBone && way.trimmed) return std::nullopt;
    if (line.state) return line.state;
    if (wasWeighedCooked(dossier, line, way)) return FoodState::Cooked;
    return stateOfPreparation(line.preparation);
}

}  // namespace nettare
