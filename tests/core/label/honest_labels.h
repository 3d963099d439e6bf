#pragma once

#include <random>
#include <vector>

#include "core/food/label_facts.h"

namespace nettare {

/// What a food is made of per 100 g, from the starter table (USDA SR28) as published.
struct FoodMakeup {
    std::string name;
    double protein = 0, fat = 0, saturates = 0, trans = 0, mono = 0, poly = 0;  ///< g
    double carbohydrate = 0, fibre = 0, sugars = 0, alcohol = 0;                ///< g; with fibre
    double cholesterol = 0, sodium = 0;                                         ///< mg
    double ownEnergy = 0;  ///< kcal by the row's own factors, 21 CFR 101.9(c)(1)(i)(A)

    /// So many grams of it, as a composition per that weight.
    [[nodiscard]] FoodMakeup times(double factor) const;
};

/// The rows of the starter that have all of these and the factors of their own. Set aside: rows of
/// which a part is more than its whole (sugars and carbohydrate are analysed apart), and baking
/// powder, of whose carbohydrate by difference a part is carbon dioxide without energy.
[[nodiscard]] const std::vector<FoodMakeup>& starterMakeups();

/// A row, or a mixture of two or three.
[[nodiscard]] FoodMakeup randomMakeup(std::mt19937& random);

/// How a package in the US may have come to its calories, 21 CFR 101.9(c)(1)(i).
enum class EnergyMethod {
    OwnFactors,    ///< (A)
    FourFourNine,  ///< (B)
    WithoutFibre,  ///< (C): a random share of the fibre is soluble, 2 kcal/g; the rest has none
    /// (E): heats of combustion 5.65, 9.4 and 4.15 kcal/g, from memory, less 1.25 kcal/g protein
    Bomb,
};
inline constexpr int kEnergyMethodCount = 4;

/// kcal of so much food.
[[nodiscard]] double energyOf(const FoodMakeup& food, EnergyMethod method, std::mt19937& random);

/// A label of so many grams; every amount is a random one of all texts that the law lets stand for
/// it. The calories go by the true amounts.
[[nodiscard]] LabelFacts honestUsLabel(const FoodMakeup& per100g, double grams, EnergyMethod method,
                                       std::mt19937& random);

/// A label per 100 g, energy by Annex XIV.
[[nodiscard]] LabelFacts honestEuLabel(const FoodMakeup& per100g, bool withFibre,
                                       std::mt19937& random);

}  // namespace nettare
