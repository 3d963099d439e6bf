#include "core/quantity/unit.h"

#include <array>

namespace nettare {

namespace {

using enum MeasureSystem;

constexpr std::string_view kSi = "SI Brochure, 9th edition";
constexpr std::string_view kPound = "NIST Handbook 44, appendix C: 1 lb = 453.59237 g exactly";
constexpr std::string_view kGallon = "NIST Handbook 44, appendix C: 1 gal = 231 cubic inches";
constexpr std::string_view kLabel = "21 CFR 101.9(b)(5)(viii)";
constexpr std::string_view kMetric = "metric household measures (common practice)";

/// Factors are the definitions, digit by digit. A us cup is 1/16 gal = 236.5882365 mL, a tablespoon
/// 1/16 and a teaspoon 1/48 of it; an ounce is 1/16 lb.
constexpr std::array kUnits{
    Unit{"g", UnitKind::Mass, {}, {1, 0}, kSi},
    Unit{"kg", UnitKind::Mass, {}, {1000, 0}, kSi},
    Unit{"mg", UnitKind::Mass, {}, {1, -3}, kSi},
    Unit{"lb", UnitKind::Mass, {}, {45359237, -5}, kPound},
    Unit{"oz", UnitKind::Mass, {}, {28349523125, -9}, kPound},
    Unit{"ml", UnitKind::Volume, {}, {1, 0}, kSi},
    Unit{"l", UnitKind::Volume, {}, {1000, 0}, kSi},
    Unit{"tsp", UnitKind::Volume, UsCustomary, {492892159375, -11}, kGallon},
    Unit{"tbsp", UnitKind::Volume, UsCustomary, {1478676478125, -11}, kGallon},
    Unit{"cup", UnitKind::Volume, UsCustomary, {2365882365, -7}, kGallon},
    Unit{"tsp", UnitKind::Volume, UsLabel, {5, 0}, kLabel},
    Unit{"tbsp", UnitKind::Volume, UsLabel, {15, 0}, kLabel},
    Unit{"cup", UnitKind::Volume, UsLabel, {240, 0}, kLabel},
    Unit{"tsp", UnitKind::Volume, Metric, {5, 0}, kMetric},
    Unit{"tbsp", UnitKind::Volume, Metric, {15, 0}, kMetric},
    Unit{"cup", UnitKind::Volume, Metric, {250, 0}, kMetric},
};

}  // namespace

std::span<const Unit> allUnits() {
    return kUnits;
}

const Unit* findUnit(std::string_view symbol, MeasureSystem system) {
    // The litre has two symbols, l and L (SI Brochure, table 8, from memory); documents keep one.
    if (symbol == "mL") symbol = "ml";
    if (symbol == "L") symbol = "l";
    for (const Unit& unit : kUnits)
        if (unit.symbol == symbol && (!unit.system || unit.system == system)) return &unit;
    return nullptr;
}

std::optional<MeasureSystem> measureSystemNamed(std::string_view name) {
    for (const MeasureSystem system : {UsCustomary, UsLabel, Metric})
        if (nameOf(system) == name) return system;
    return std::nullopt;
}

std::string_view nameOf(MeasureSystem system) {
    switch (system) {
        case UsCustomary:
            return "us";
        case UsLabel:
            return "label";
        case Metric:
            return "metric";
    }
    return {};
}

Mass massOf(double amount, const Unit& unit) {
    return Mass::fromGrams(amount * unit.factor.value());
}

Volume volumeOf(double amount, const Unit& unit) {
    return Volume::fromMillilitres(amount * unit.factor.value());
}

}  // namespace nettare
