#pragma once

#include "core/nutrition/composition.h"

namespace nettare {

// The steps of compositionOf(), in their order. Each leaves alone what an earlier one has settled.

void addStated(const Food& food, std::uint32_t index, Composition& composition);
[[nodiscard]] std::optional<Error> addLabel(const Food& food, std::uint32_t index,
                                            const Assumptions& assumptions,
                                            Composition& composition);
void addTable(const Food& food, Composition& composition);
/// Rules of kind, energy in the other unit, bounds of what is missing.
void settleGaps(const Food& food, Composition& composition);
/// Added sugars: by the food's trait; without one, between none and all of its sugars.
void settleAddedSugars(const Food& food, std::uint32_t index, Composition& composition);
/// AddedSugarsAboveSugars where more is stated than the food's sugars can be.
[[nodiscard]] std::optional<Error> checkAddedSugars(const Food& food,
                                                    const Composition& composition);
/// Sources of the table's values and what they move, once it is known which values the table gives.
void addTableSources(const Food& food, std::uint32_t index, const Assumptions& assumptions,
                     Composition& composition);
/// What the gaps took over from a known value moves with that value.
void passOnEffects(Composition& composition);

[[nodiscard]] constexpr SourceKey compositionKey(std::uint32_t food, Component component) {
    return {SourceKind::Composition, food, static_cast<std::uint32_t>(component)};
}

[[nodiscard]] inline bool isKnown(const Composition& composition, Component c) {
    return composition[c].origin != Origin::Missing;
}

inline void settle(Composition& composition, Component c, Origin origin, double perGram,
                   bool onLabel = false) {
    ComponentAmount& amount = composition.amounts[indexOf(c)];
    amount.origin = origin;
    amount.perGram = perGram;
    amount.onLabel = onLabel;
}

// Ends of a known amount: a label's printed one stands for its whole interval.
[[nodiscard]] inline double leastOf(const ComponentAmount& amount) {
    return amount.origin == Origin::Label ? amount.low : amount.perGram;
}
[[nodiscard]] inline double mostOf(const ComponentAmount& amount) {
    return amount.origin == Origin::Label ? amount.high.value_or(amount.perGram) : amount.perGram;
}

/// kcal per g of protein, fat, carbohydrate and alcohol that a table row's energy was computed
/// with: its own factors, else the general 4/9/4 (21 CFR 101.9(c)(1)(i)(B)); alcohol 6.93 (USDA
/// Handbook 74).
struct EnergyFactors {
    double protein, fat, carbohydrate, alcohol;
};
[[nodiscard]] EnergyFactors energyFactorsOf(const ConversionFactors& factors);

}  // namespace nettare
