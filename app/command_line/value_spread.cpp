#include "app/command_line/value_spread.h"

#include <cmath>

#include "core/nutrition/student_t.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

double ValueSpread::halfWidth() const {
    return coverageFactor(freedom) * u;
}

std::optional<ValueSpread> spreadOf(const FoodValue& value, const Profile& profile) {
    if (value.standardError && value.n >= 2)
        return ValueSpread{.u = *value.standardError * std::sqrt(1.0 + value.n),
                           .freedom = value.n - 1.0,
                           .assumed = false};
    const auto component = componentNamed(value.tagname);
    if (!component) return std::nullopt;
    const auto relative = profile.spread.at(indexOf(*component)).assumedRelative;
    if (!relative) return std::nullopt;
    return ValueSpread{.u = *relative * value.per100g,
                       .freedom = Assumptions{}.spreadFreedom.value(),
                       .assumed = true};
}

}  // namespace nettare
