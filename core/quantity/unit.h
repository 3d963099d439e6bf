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

/// Whose spoon and cup: they differ by up to 6 %, so every recipe names its system.
enum class MeasureSystem {
    UsCustomary,  ///< tsp 4.92892159375 mL, tbsp 3 tsp, cup 48 tsp (NIST HB 44, appendix C)
    UsLabel,      ///< 5, 15, 240 mL (21 CFR 101.9(b)(5)(viii))
    Metric,       ///< 5, 15, 250 mL (common practice)
};

/// One unit with its exact factor: grams for masses, millilitres for volumes.
struct Unit {
    std::string_view symbol;              ///< as written in a document: "tbsp"
    UnitKind kind;                        ///< Mass or Volume; pieces have no factor and no row
    std::optional<MeasureSystem> system;  ///< set for spoons and cups only
    Decimal factor;                       ///< g or mL in one unit, exact
    std::string_view source;              ///< where the factor is published
};

/// All units with a factor; spoons and cups once for each system.
[[nodiscard]] std::span<const Unit> allUnits();

/// The unit of that exact symbol in that system, "mL" and "L" also so; null if there is none. What
/// has no system (g, ml, lb ...) is found under each.
[[nodiscard]] const Unit* findUnit(std::string_view symbol, MeasureSystem system);

/// "us", "label" or "metric", as documents write it; nothing for other words.
[[nodiscard]] std::optional<MeasureSystem> measureSystemNamed(std::string_view name);
[[nodiscard]] std::string_view nameOf(MeasureSystem system);

/// An amount of a mass unit as a mass, of a volume unit as a volume. The kind must match;
/// it is not checked here.
[[nodiscard]] Mass massOf(double amount, const Unit& unit);
[[nodiscard]] Volume volumeOf(double amount, const Unit& unit);

}  // namespace nettare
