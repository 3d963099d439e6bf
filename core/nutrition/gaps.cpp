#include <algorithm>
#include <initializer_list>

#include "core/nutrition/composition_parts.h"

namespace nettare {

namespace {

using enum Component;

constexpr double kKilojoulesPerKilocalorie = 4.184;  // NIST SP 811, B.8

bool known(const Composition& composition, Component c) {
    return composition[c].origin != Origin::Missing;
}

void settle(Composition& composition, Component c, Origin origin, double perGram,
            bool onLabel = false) {
    ComponentAmount& amount = composition.amounts[indexOf(c)];
    amount.origin = origin;
    amount.perGram = perGram;
    amount.onLabel = onLabel;
}

void convertEnergy(Composition& composition, Component from, Component to, double factor) {
    if (known(composition, to) || !known(composition, from)) return;
    settle(composition, to, Origin::Converted, composition[from].perGram * factor,
           composition[from].onLabel);
}

/// Ends of a known amount: a label's printed one stands for its whole interval.
double leastOf(const ComponentAmount& amount) {
    return amount.origin == Origin::Label ? amount.low : amount.perGram;
}
double mostOf(const ComponentAmount& amount) {
    return amount.origin == Origin::Label ? amount.high.value_or(amount.perGram) : amount.perGram;
}

/// Bounds a missing part by the most that its parent leaves beside the parts that are known.
void boundByRest(Composition& composition, Component part, double parent,
                 std::initializer_list<Component> siblings) {
    if (known(composition, part)) return;
    double rest = parent;
    for (const Component sibling : siblings)
        if (sibling != part && known(composition, sibling)) rest -= leastOf(composition[sibling]);
    rest = rest < 1e-9 ? 0 : rest;
    if (rest == 0)
        settle(composition, part, Origin::ByParent, 0);
    else
        composition.amounts[indexOf(part)].high = rest;
}

/// The parts of a parent, each bounded beside the others; a missing parent leaves its own bound.
void boundParts(Composition& composition, Component parent,
                std::initializer_list<Component> parts) {
    const std::optional<double> most = known(composition, parent)
                                           ? std::optional{mostOf(composition[parent])}
                                           : composition[parent].high;
    if (!most) return;
    for (const Component part : parts) boundByRest(composition, part, *most, parts);
}

/// What a label prints without fibre bounds both sides of it.
void boundBesideFibre(Composition& composition) {
    if (!composition.withoutFibre) return;
    const auto lower = [&](Component part, double most) {
        ComponentAmount& amount = composition.amounts[indexOf(part)];
        if (amount.origin == Origin::Missing && amount.high)
            amount.high = std::min(*amount.high, std::max(0.0, most));
    };
    lower(SUGAR, composition.withoutFibre->high);
    const ComponentAmount& whole = composition[CHOCDF];
    if (whole.origin == Origin::Missing && whole.high)
        lower(FIBTG, *whole.high - composition.withoutFibre->low);
}

void boundAll(Composition& composition) {
    for (const Component part : {WATER, ASH, PROCNT, FAT, CHOCDF, ALC})
        boundByRest(composition, part, 1, {WATER, ASH, PROCNT, FAT, CHOCDF, ALC});
    boundParts(composition, FAT, {FASAT, FATRN, FAMS, FAPU});
    boundParts(composition, CHOCDF, {FIBTG, SUGAR});
    boundBesideFibre(composition);
}

/// Added sugars: by the food's trait; without one, between none and all of its sugars.
void settleAddedSugars(const Food& food, Composition& composition) {
    if (known(composition, SUGAD)) return;
    const ComponentAmount& sugars = composition[SUGAR];
    const bool rowsProduct = food.table && (!food.label || food.labelOfRow);
    const AddedSugarKind kind = food.addedSugarsGiven || rowsProduct
                                    ? food.addedSugars.kind
                                    : AddedSugarKind::BetweenNoneAndAll;
    ComponentAmount& added = composition.amounts[indexOf(SUGAD)];
    const bool noSugars = known(composition, SUGAR) && sugars.perGram == 0;
    if (kind != AddedSugarKind::None && noSugars && mostOf(sugars) > 0)
        settle(composition, SUGAD, Origin::AllSugars, 0, sugars.onLabel);
    else if (kind == AddedSugarKind::None || noSugars)
        settle(composition, SUGAD, noSugars ? Origin::ByParent : Origin::ByKind, 0);
    else if (kind == AddedSugarKind::Stated)
        settle(composition, SUGAD, Origin::Stated, food.addedSugars.statedPer100g / 100);
    else if (kind == AddedSugarKind::AllOfItsSugars && known(composition, SUGAR))
        settle(composition, SUGAD, Origin::AllSugars, sugars.perGram, sugars.onLabel);
    else
        added.high = known(composition, SUGAR) ? std::optional{mostOf(sugars)} : sugars.high;
}

}  // namespace

void settleGaps(const Food& food, Composition& composition) {
    if (food.plant && !known(composition, FATRN)) settle(composition, FATRN, Origin::ByKind, 0);
    convertEnergy(composition, ENERC_KCAL, ENERC_KJ, kKilojoulesPerKilocalorie);
    convertEnergy(composition, ENERC_KJ, ENERC_KCAL, 1 / kKilojoulesPerKilocalorie);
    boundAll(composition);
    settleAddedSugars(food, composition);
}

void passOnEffects(Composition& composition) {
    for (CompositionSource& entry : composition.sources) {
        const EffectList direct = entry.effects;
        for (const Effect& effect : direct) {
            const auto pass = [&](Component from, Component to, Origin origin, double factor) {
                if (effect.component == from && composition[to].origin == origin)
                    entry.effects.add({to, effect.perGram * factor});
            };
            pass(SUGAR, SUGAD, Origin::AllSugars, 1);
            pass(ENERC_KCAL, ENERC_KJ, Origin::Converted, kKilojoulesPerKilocalorie);
            pass(ENERC_KJ, ENERC_KCAL, Origin::Converted, 1 / kKilojoulesPerKilocalorie);
        }
    }
}

}  // namespace nettare
