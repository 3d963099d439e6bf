#include <cmath>

#include "core/nutrition/composition_parts.h"
#include "core/publish/measure_text.h"

namespace nettare {

namespace {

using enum Component;

AddedSugarKind kindOf(const Food& food) {
    const bool rowsProduct = food.table && (!food.label || food.labelOfRow);
    return food.addedSugarsGiven || rowsProduct ? food.addedSugars.kind
                                                : AddedSugarKind::BetweenNoneAndAll;
}

/// The last digit of the stated amount is as uncertain as that of any other stated value.
void settleStated(const Food& food, std::uint32_t index, Composition& composition) {
    const double per100g = food.addedSugars.statedPer100g;
    const double lastDigit = Decimal{1, -Decimal::fromDouble(per100g).decimals()}.value();
    settle(composition, SUGAD, Origin::Stated, per100g / 100);
    composition.sources.push_back({rectangle(compositionKey(index, SUGAD), rectangular(lastDigit)),
                                   EffectList{{SUGAD, 0.01}}});
}

/// Standard uncertainty of added less all sugars, per gram; a source of both acts once.
double uncertaintyOfRest(const Composition& composition) {
    double squares = 0;
    for (const CompositionSource& entry : composition.sources) {
        double rest = 0;
        for (const Effect& effect : entry.effects)
            rest += effect.component == SUGAD   ? effect.perGram
                    : effect.component == SUGAR ? -effect.perGram
                                                : 0;
        squares += std::pow(rest * entry.source.u, 2);
    }
    return std::sqrt(squares);
}

}  // namespace

void settleAddedSugars(const Food& food, std::uint32_t index, Composition& composition) {
    if (isKnown(composition, SUGAD)) return;
    const ComponentAmount& sugars = composition[SUGAR];
    const AddedSugarKind kind = kindOf(food);
    ComponentAmount& added = composition.amounts[indexOf(SUGAD)];
    const bool noSugars = isKnown(composition, SUGAR) && sugars.perGram == 0;
    if (kind == AddedSugarKind::Stated)
        settleStated(food, index, composition);
    else if (kind != AddedSugarKind::None && noSugars && mostOf(sugars) > 0)
        settle(composition, SUGAD, Origin::AllSugars, 0, sugars.onLabel);
    else if (kind == AddedSugarKind::None || noSugars)
        settle(composition, SUGAD, noSugars ? Origin::ByParent : Origin::ByKind, 0);
    else if (kind == AddedSugarKind::AllOfItsSugars && isKnown(composition, SUGAR))
        settle(composition, SUGAD, Origin::AllSugars, sugars.perGram, sugars.onLabel);
    else
        added.high = isKnown(composition, SUGAR) ? std::optional{mostOf(sugars)} : sugars.high;
}

std::optional<Error> checkAddedSugars(const Composition& composition) {
    const ComponentAmount& added = composition[SUGAD];
    const ComponentAmount& sugars = composition[SUGAR];
    if (added.origin != Origin::Stated) return std::nullopt;
    const std::optional<double> most =
        isKnown(composition, SUGAR) ? std::optional{mostOf(sugars)} : sugars.high;
    // Two standard uncertainties, about 95 %: sugars of a table are a mean.
    if (!most || added.perGram <= *most + 2 * uncertaintyOfRest(composition) + 1e-12)
        return std::nullopt;
    return Error{ErrorCode::AddedSugarsAboveSugars}
        .with("found", shortNumber(100 * added.perGram))
        .with("most", shortNumber(100 * *most))
        .at("/added_sugars");
}

}  // namespace nettare
