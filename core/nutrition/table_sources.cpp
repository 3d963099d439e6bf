#include <cmath>

#include "core/nutrition/composition_parts.h"

namespace nettare {

namespace {

using enum Component;

/// Standard uncertainty of one lot per 100 g and its degrees of freedom; nothing where no spread is
/// known or assumed.
std::optional<Source> lotSource(const Spread& spread, double per100g, std::uint32_t food,
                                Component component, const Assumptions& assumptions) {
    const SourceKey key = compositionKey(food, component);
    if (spread.standardError && spread.n >= 2) {
        const double se = *spread.standardError;
        Source lot = ownSource(key, std::sqrt(se * se + spread.n * se * se), spread.n - 1);
        lot.meanShare = 1 / std::sqrt(1.0 + spread.n);
        return lot;
    }
    const std::optional<double> relative =
        assumptions.compositionSpread ? std::optional{assumptions.compositionSpread->value()}
                                      : spread.assumedRelative;
    if (!relative) return std::nullopt;
    // Of how many lots the mean is, the table does not say; it may be of one.
    return ownSource(key, *relative * per100g, assumptions.spreadFreedom.value());
}

/// What one gram more of a part per 100 g of food does to carbohydrate by difference and to energy.
/// Where carbohydrate is zero by kind it stays zero and only protein, fat and alcohol move the
/// energy.
struct Closure {
    double carbohydrate = 0;
    double kilocalories = 0;
};

Closure closureFor(Component part, const EnergyFactors& factors, bool carbohydrateIsZero) {
    const double direct = part == PROCNT ? factors.protein
                          : part == FAT  ? factors.fat
                          : part == ALC  ? factors.alcohol
                                         : 0;
    const bool proximate =
        part == PROCNT || part == FAT || part == WATER || part == ASH || part == ALC;
    if (!proximate) return {};
    if (carbohydrateIsZero) return {0, direct};
    return {-1, direct - factors.carbohydrate};
}

}  // namespace

EnergyFactors energyFactorsOf(const ConversionFactors& factors) {
    if (!factors.protein && !factors.fat && !factors.carbohydrate) return {4, 9, 4, 6.93};
    return {factors.protein.value_or(4), factors.fat.value_or(9), factors.carbohydrate.value_or(4),
            6.93};
}

void addTableSources(const Food& food, std::uint32_t index, const Assumptions& assumptions,
                     Composition& composition) {
    if (!food.table) return;
    const Profile& profile = food.table->profile;
    const EnergyFactors factors = energyFactorsOf(food.table->factors);
    const bool noCarbohydrate = profile[CHOCDF].value_or(1) == 0;
    const auto fromTable = [&](Component c) { return composition[c].origin == Origin::Table; };
    for (const ComponentFacts& facts : allComponents()) {
        const Component part = facts.component;
        const auto value = profile[part];
        if (!value || part == CHOCDF || part == ENERC_KCAL || part == ENERC_KJ) continue;
        const auto source =
            lotSource(profile.spread[indexOf(part)], *value, index, part, assumptions);
        if (!source || source->u == 0) continue;
        CompositionSource entry{*source, {}};
        const auto effect = [&](Component target, double size) {
            if (size != 0 && fromTable(target)) entry.effects.add({target, size / 100});
        };
        effect(part, 1);
        const Closure closure = closureFor(part, factors, noCarbohydrate);
        effect(CHOCDF, closure.carbohydrate);
        effect(ENERC_KCAL, closure.kilocalories);
        effect(ENERC_KJ, closure.kilocalories * 4.184);
        if (!entry.effects.empty()) composition.sources.push_back(entry);
    }
}

}  // namespace nettare
