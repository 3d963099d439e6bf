#include "core/food/volume_measure.h"

#include <array>
#include <utility>

#include "core/quantity/unit.h"

namespace nettare {

std::optional<double> volumeOfMeasure(std::string_view unit) {
    // 1/128, 1/8 and 1/4 gal. Tables use them, documents do not, so that they are no units of a
    // line.
    constexpr std::array<std::pair<std::string_view, Decimal>, 3> kLarge{{
        {"fl_oz", {295735295625, -10}},
        {"pint", {473176473, -6}},
        {"quart", {946352946, -6}},
    }};
    for (const auto& [word, factor] : kLarge)
        if (word == unit) return factor.value();
    const Unit* known = findUnit(unit, MeasureSystem::UsCustomary);
    if (known == nullptr || known->kind != UnitKind::Volume) return std::nullopt;
    return volumeOf(1, *known).millilitres();
}

}  // namespace nettare
