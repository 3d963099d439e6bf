#include <algorithm>
#include <string>

#include "core/label/check_label_clashes.h"
#include "core/quantity/unit.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// 21 CFR 101.9(b)(5)(viii): an ounce of a serving is 28 g.
constexpr double kLabelOunceGrams = 28;

/// "tbsp" of "Tablespoons".
std::string symbolOf(std::string_view unit) {
    std::string symbol = lowerAscii(trimmed(unit));
    if (symbol.size() > 2 && symbol.back() == 's') symbol.pop_back();
    if (symbol == "tablespoon") return "tbsp";
    if (symbol == "teaspoon") return "tsp";
    if (symbol == "ounce") return "oz";
    if (symbol == "fluid ounce") return "fl oz";
    return symbol;
}

}  // namespace

// A package says "1 cup" and not whose: the smallest and the largest in use count.
std::optional<MeasureSize> measureSize(const LabelFacts& label) {
    if (!label.householdAmount) return std::nullopt;
    const std::string symbol = symbolOf(label.householdUnit);
    std::optional<MeasureSize> found;
    for (const MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::UsLabel,
                                       MeasureSystem::Metric, MeasureSystem::Imperial}) {
        const Unit* unit = findUnit(symbol, system);
        if (unit == nullptr || unit->kind == UnitKind::Piece || unit->isVague()) continue;
        const double one = unit->factor.value();
        if (!found) found = MeasureSize{{one, one}, unit->kind == UnitKind::Mass, 1};
        found->size = {std::min(found->size.low, one), std::max(found->size.high, one)};
    }
    if (!found) return std::nullopt;
    if (symbol == "oz") found->size.low = std::min(found->size.low, kLabelOunceGrams);
    found->count = label.householdAmount->middle();
    found->size.low *= label.householdAmount->low().value();
    found->size.high *= label.householdAmount->high().value();
    return found;
}

}  // namespace nettare
