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

/// An amount of added sugars that the cook states, per gram, and its standard uncertainty.
struct StatedAdded {
    double perGram, u;
};

std::optional<StatedAdded> statedAdded(const Food& food) {
    for (const StatedValue& stated : food.stated)
        if (stated.component == SUGAD) {
            const double lastDigit = Decimal{1, -stated.per100g.decimals()}.value();
            const double width = stated.within ? 2 * stated.within->value() : lastDigit;
            return StatedAdded{stated.per100g.value() / 100, rectangular(width) / 100};
        }
    if (kindOf(food) != AddedSugarKind::Stated) return std::nullopt;
    const double per100g = food.addedSugars.statedPer100g;
    const double lastDigit = Decimal{1, -Decimal::fromDouble(per100g).decimals()}.value();
    return StatedAdded{per100g / 100, rectangular(lastDigit) / 100};
}

/// The stated amount; all of the food's sugars where it lies above them, so that no figure has more
/// added sugars than sugars.
void settleStated(const StatedAdded& stated, std::uint32_t index, Composition& composition) {
    const SourceKey key = compositionKey(index, SUGAD);
    std::erase_if(composition.sources,
                  [&](const CompositionSource& entry) { return entry.source.key == key; });
    const ComponentAmount& sugars = composition[SUGAR];
    if (isKnown(composition, SUGAR) && stated.perGram > sugars.perGram)
        return settle(composition, SUGAD, Origin::AllSugars, sugars.perGram, sugars.onLabel);
    settle(composition, SUGAD, Origin::Stated, stated.perGram);
    composition.sources.push_back({rectangle(key, 100 * stated.u), EffectList{{SUGAD, 0.01}}});
}

/// Standard uncertainty of a food's sugars, per gram.
double uncertaintyOfSugars(const Composition& composition) {
    double squares = 0;
    for (const CompositionSource& entry : composition.sources)
        for (const Effect& effect : entry.effects)
            if (effect.component == SUGAR) squares += std::pow(effect.perGram * entry.source.u, 2);
    return std::sqrt(squares);
}

}  // namespace

void settleAddedSugars(const Food& food, std::uint32_t index, Composition& composition) {
    if (composition[SUGAD].origin == Origin::Label) return;
    if (const auto stated = statedAdded(food)) return settleStated(*stated, index, composition);
    const ComponentAmount& sugars = composition[SUGAR];
    const AddedSugarKind kind = kindOf(food);
    ComponentAmount& added = composition.amounts[indexOf(SUGAD)];
    if (isKnown(composition, SUGAD)) return;
    const bool noSugars = isKnown(composition, SUGAR) && sugars.perGram == 0;
    if (kind != AddedSugarKind::None && noSugars && mostOf(sugars) > 0)
        settle(composition, SUGAD, Origin::AllSugars, 0, sugars.onLabel);
    else if (kind == AddedSugarKind::None || noSugars)
        settle(composition, SUGAD, noSugars ? Origin::ByParent : Origin::ByKind, 0);
    else if (kind == AddedSugarKind::AllOfItsSugars && isKnown(composition, SUGAR))
        settle(composition, SUGAD, Origin::AllSugars, sugars.perGram, sugars.onLabel);
    else
        added.high = isKnown(composition, SUGAR) ? std::optional{mostOf(sugars)} : sugars.high;
}

std::optional<Error> checkAddedSugars(const Food& food, const Composition& composition) {
    const auto stated = statedAdded(food);
    if (!stated || composition[SUGAD].origin == Origin::Label) return std::nullopt;
    const ComponentAmount& sugars = composition[SUGAR];
    const std::optional<double> most =
        isKnown(composition, SUGAR) ? std::optional{mostOf(sugars)} : sugars.high;
    // Two standard uncertainties, about 95 %: sugars of a table are a mean.
    const double within = 2 * std::hypot(stated->u, uncertaintyOfSugars(composition));
    if (!most || stated->perGram <= *most + within + 1e-12) return std::nullopt;
    return Error{ErrorCode::AddedSugarsAboveSugars}
        .with("found", shortNumber(100 * stated->perGram))
        .with("most", shortNumber(100 * *most))
        .at("/added_sugars");
}

}  // namespace nettare
