#include <algorithm>
#include <initializer_list>

#include "core/nutrition/composition_parts.h"

namespace nettare {

namespace {

using enum Component;

constexpr double kKilojoulesPerKilocalorie = 4.184;  // NIST SP 811, B.8

void convertEnergy(Composition& composition, Component from, Component to, double factor) {
    if (isKnown(composition, to) || !isKnown(composition, from)) return;
    settle(composition, to, Origin::Converted, composition[from].perGram * factor,
           composition[from].onLabel);
}

/// Bounds a missing part by the most that its parent leaves beside the parts that are known.
void boundByRest(Composition& composition, Component part, double parent,
                 std::initializer_list<Component> siblings) {
    if (isKnown(composition, part)) return;
    double rest = parent;
    for (const Component sibling : siblings)
        if (sibling != part && isKnown(composition, sibling)) rest -= leastOf(composition[sibling]);
    rest = rest < 1e-9 ? 0 : rest;
    if (rest == 0)
        settle(composition, part, Origin::ByParent, 0);
    else
        composition.amounts[indexOf(part)].high = rest;
}

/// The parts of a parent, each bounded beside the others; a missing parent leaves its own bound.
void boundParts(Composition& composition, Component parent,
                std::initializer_list<Component> parts) {
    const std::optional<double> most = isKnown(composition, parent)
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

}  // namespace

void settleGaps(const Food& food, Composition& composition) {
    if (food.plant && !isKnown(composition, FATRN)) settle(composition, FATRN, Origin::ByKind, 0);
    convertEnergy(composition, ENERC_KCAL, ENERC_KJ, kKilojoulesPerKilocalorie);
    convertEnergy(composition, ENERC_KJ, ENERC_KCAL, 1 / kKilojoulesPerKilocalorie);
    boundAll(composition);
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
