#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/quantity/decimal.h"
#include "core/quantity/mass.h"
#include "core/quantity/volume.h"

namespace nettare {

/// What a unit measures. `Piece` counts; it has no factor.
enum class UnitKind { Mass, Volume, Piece };

/// Whose spoon, cup and pint: cups differ by a fifth, spoons by a third, so every recipe names its
/// system.
enum class MeasureSystem {
    UsCustomary,  ///< tsp 4.92892159375 mL, tbsp 3 tsp, cup 48 tsp (NIST HB 44, appendix C)
    UsLabel,      ///< 5, 15, 240 mL, fluid ounce 30 mL (21 CFR 101.9(b)(5)(viii)); else customary
    Metric,       ///< 5, 15, 250 mL (common practice); no fluid ounce, pint, quart or gallon
    Imperial,     ///< 5, 15 mL, cup of half a pint; the gallon of 4.54609 L and its parts
    Australian,   ///< 5, 20, 250 mL (common practice); the imperial gallon and its parts
};

/// One unit with its exact factor: grams for masses, millilitres for volumes.
struct Unit {
    std::string_view symbol;              ///< as written in a document: "tbsp"
    UnitKind kind;                        ///< Mass or Volume; pieces have no factor and no row
    std::optional<MeasureSystem> system;  ///< set where systems differ: spoons, cups, pints
    Decimal factor;                       ///< g or mL in one unit, exact unless it is vague
    std::string_view source;              ///< where the factor is published
    /// Relative half-width of a rectangle about the factor, in which any cook's own one lies; 0 for
    /// units that have a definition.
    Decimal vagueness{};

    /// A pinch or the like: a manner of speaking with a middle and a width.
    [[nodiscard]] constexpr bool isVague() const { return vagueness.coefficient() != 0; }
};

/// All units with a factor; spoons, cups and pints once for each system.
[[nodiscard]] std::span<const Unit> allUnits();
/// What findSizeOfThing() finds.
[[nodiscard]] std::span<const Unit> allSizesOfThings();

/// The unit of that exact symbol in that system, "mL" and "L" also so; null if there is none. What
/// has no system (g, ml, lb, "us pint", "imp pint" ...) is found under each. The US customary
/// system has every symbol; the metric one has no "fl oz", "pint", "quart", "gal": two are in use.
[[nodiscard]] const Unit* findUnit(std::string_view symbol, MeasureSystem system);

/// Things that cookery books measure by, "butter the size of a walnut": "hazelnut", "walnut" and
/// "egg" as vague volumes (common practice, from memory). No units of a document, where an egg is a
/// piece; null for other things.
[[nodiscard]] const Unit* findSizeOfThing(std::string_view thing);

/// "us", "label", "metric", "imperial" or "australian", as documents write it; nothing for other
/// words.
[[nodiscard]] std::optional<MeasureSystem> measureSystemNamed(std::string_view name);
[[nodiscard]] std::string_view nameOf(MeasureSystem system);

/// Whether scales show it: a unit of mass, and no stick of butter.
[[nodiscard]] bool isShownByScales(const Unit& unit);

/// An amount of a mass unit as a mass, of a volume unit as a volume. The kind must match;
/// it is not checked here.
[[nodiscard]] Mass massOf(double amount, const Unit& unit);
[[nodiscard]] Volume volumeOf(double amount, const Unit& unit);

}  // namespace nettare
