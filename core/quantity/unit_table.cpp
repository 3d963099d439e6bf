#include "core/quantity/unit.h"

#include <array>

namespace nettare {

namespace {

using enum MeasureSystem;

constexpr std::string_view kSi = "SI Brochure, 9th edition";
constexpr std::string_view kPound = "NIST Handbook 44, appendix C: 1 lb = 453.59237 g exactly";
constexpr std::string_view kGallon = "NIST Handbook 44, appendix C: 1 gal = 231 cubic inches";
constexpr std::string_view kLabel = "21 CFR 101.9(b)(5)(viii)";
constexpr std::string_view kImperialGallon =
    "Weights and Measures Act 1985 (UK), schedule 1: 1 gal = 4.54609 L exactly";
constexpr std::string_view kMetric = "metric household measures (common practice)";
constexpr std::string_view kBritish = "British household measures (common practice)";
constexpr std::string_view kAustralian = "Australian household measures (common practice)";
constexpr std::string_view kStick = "a quarter of a pound of butter, as packed (common practice)";
constexpr std::string_view kPinch = "part of a teaspoon of 5 mL (common practice), at least ±50 %";
constexpr std::string_view kThing = "size of a thing (common practice, from memory)";

constexpr Decimal kVagueByHalf{5, -1};

/// Factors are the definitions, digit by digit. A us cup is 1/16 gal = 236.5882365 mL, a tablespoon
/// 1/16, a fluid ounce 1/8 and a teaspoon 1/48 of it; an imperial fluid ounce is 1/160 gal; an
/// ounce is 1/16 lb.
constexpr std::array kUnits{
    Unit{"g", UnitKind::Mass, {}, {1, 0}, kSi},
    Unit{"kg", UnitKind::Mass, {}, {1000, 0}, kSi},
    Unit{"mg", UnitKind::Mass, {}, {1, -3}, kSi},
    Unit{"lb", UnitKind::Mass, {}, {45359237, -5}, kPound},
    Unit{"oz", UnitKind::Mass, {}, {28349523125, -9}, kPound},
    Unit{"stick", UnitKind::Mass, {}, {1133980925, -7}, kStick},
    Unit{"ml", UnitKind::Volume, {}, {1, 0}, kSi},
    Unit{"cl", UnitKind::Volume, {}, {10, 0}, kSi},
    Unit{"dl", UnitKind::Volume, {}, {100, 0}, kSi},
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
    Unit{"tsp", UnitKind::Volume, Imperial, {5, 0}, kBritish},
    Unit{"tbsp", UnitKind::Volume, Imperial, {15, 0}, kBritish},
    Unit{"cup", UnitKind::Volume, Imperial, {284130625, -6}, kImperialGallon},
    Unit{"tsp", UnitKind::Volume, Australian, {5, 0}, kAustralian},
    Unit{"tbsp", UnitKind::Volume, Australian, {20, 0}, kAustralian},
    Unit{"cup", UnitKind::Volume, Australian, {250, 0}, kAustralian},
    Unit{"dessertspoon", UnitKind::Volume, {}, {10, 0}, kBritish},
    Unit{"fl oz", UnitKind::Volume, UsCustomary, {295735295625, -10}, kGallon},
    Unit{"pint", UnitKind::Volume, UsCustomary, {473176473, -6}, kGallon},
    Unit{"quart", UnitKind::Volume, UsCustomary, {946352946, -6}, kGallon},
    Unit{"gal", UnitKind::Volume, UsCustomary, {3785411784, -6}, kGallon},
    Unit{"fl oz", UnitKind::Volume, UsLabel, {30, 0}, kLabel},
    Unit{"pint", UnitKind::Volume, UsLabel, {473176473, -6}, kGallon},
    Unit{"quart", UnitKind::Volume, UsLabel, {946352946, -6}, kGallon},
    Unit{"gal", UnitKind::Volume, UsLabel, {3785411784, -6}, kGallon},
    Unit{"fl oz", UnitKind::Volume, Imperial, {284130625, -7}, kImperialGallon},
    Unit{"pint", UnitKind::Volume, Imperial, {56826125, -5}, kImperialGallon},
    Unit{"quart", UnitKind::Volume, Imperial, {11365225, -4}, kImperialGallon},
    Unit{"gal", UnitKind::Volume, Imperial, {454609, -2}, kImperialGallon},
    Unit{"fl oz", UnitKind::Volume, Australian, {284130625, -7}, kImperialGallon},
    Unit{"pint", UnitKind::Volume, Australian, {56826125, -5}, kImperialGallon},
    Unit{"quart", UnitKind::Volume, Australian, {11365225, -4}, kImperialGallon},
    Unit{"gal", UnitKind::Volume, Australian, {454609, -2}, kImperialGallon},
    Unit{"us fl oz", UnitKind::Volume, {}, {295735295625, -10}, kGallon},
    Unit{"us pint", UnitKind::Volume, {}, {473176473, -6}, kGallon},
    Unit{"us quart", UnitKind::Volume, {}, {946352946, -6}, kGallon},
    Unit{"us gal", UnitKind::Volume, {}, {3785411784, -6}, kGallon},
    Unit{"imp fl oz", UnitKind::Volume, {}, {284130625, -7}, kImperialGallon},
    Unit{"imp pint", UnitKind::Volume, {}, {56826125, -5}, kImperialGallon},
    Unit{"imp quart", UnitKind::Volume, {}, {11365225, -4}, kImperialGallon},
    Unit{"imp gal", UnitKind::Volume, {}, {454609, -2}, kImperialGallon},
    Unit{"pinch", UnitKind::Volume, {}, {3125, -4}, kPinch, kVagueByHalf},
    Unit{"dash", UnitKind::Volume, {}, {625, -3}, kPinch, kVagueByHalf},
    Unit{"drop", UnitKind::Volume, {}, {521, -4}, kPinch, kVagueByHalf},
};
/// Read as 3 to 7, 15 to 30 and 50 to 65 mL.
constexpr std::array kThings{
    Unit{"hazelnut", UnitKind::Volume, {}, {5, 0}, kThing, {4, -1}},
    Unit{"walnut", UnitKind::Volume, {}, {225, -1}, kThing, {3333, -4}},
    Unit{"egg", UnitKind::Volume, {}, {575, -1}, kThing, {1304, -4}},
};

}  // namespace

std::span<const Unit> allUnits() {
    return kUnits;
}

std::span<const Unit> allSizesOfThings() {
    return kThings;
}

}  // namespace nettare
