#include <algorithm>

#include "core/label/check_label_clashes.h"
#include "core/label/household_unit.h"

namespace nettare {

namespace {

/// 21 CFR 101.9(b)(5)(viii): an ounce of a serving is 28 g.
constexpr double kLabelOunceGrams = 28;

}  // namespace

// A package says "1 cup" and not whose: the smallest and the largest in use count.
std::optional<MeasureSize> measureSize(const LabelFacts& label) {
    if (!label.householdAmount) return std::nullopt;
    std::optional<MeasureSize> found;
    bool ounce = false;
    for (const MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::UsLabel,
                                       MeasureSystem::Metric, MeasureSystem::Imperial}) {
        const Unit* unit = householdUnit(label.householdUnit, system);
        if (unit == nullptr || unit->kind == UnitKind::Piece || unit->isVague()) continue;
        const double one = unit->factor.value();
        ounce = unit->symbol == "oz";
        if (!found) found = MeasureSize{{one, one}, unit->kind == UnitKind::Mass, 1};
        found->size = {std::min(found->size.low, one), std::max(found->size.high, one)};
    }
    if (!found) return std::nullopt;
    if (ounce) found->size.low = std::min(found->size.low, kLabelOunceGrams);
    found->count = label.householdAmount->middle();
    found->size.low *= label.householdAmount->low().value();
    found->size.high *= label.householdAmount->high().value();
    return found;
}

}  // namespace nettare
