#pragma once

#include <optional>

#include "core/nutrition/way_to_grams.h"
#include "core/nutrition/written_amount.h"

namespace nettare {

/// An amount of a unit, or of pieces where the unit is null.
struct Asked {
    LinearForm amount;
    const Unit* unit;
};

/// What the ways of one line look at.
struct LineContext {
    const Dossier& dossier;
    const Recipe& recipe;
    const Line& line;
    const Food& food;
    std::uint32_t foodIndex;
    std::uint32_t number;  ///< of the line among all recipes

    /// Those of the recipe asked for hold for the kept recipes it uses too, so that a food they
    /// share is assumed to vary in one way.
    [[nodiscard]] const Assumptions& assumptions() const { return dossier.main().assumptions; }
    [[nodiscard]] Asked asked() const { return {amountOf(line, number), line.unit}; }
};

// Each answers the way if it is open, nothing if it is not, or the error that makes the line wrong.

[[nodiscard]] Result<std::optional<OpenWay>> weighedWay(const LineContext& context);
[[nodiscard]] Result<std::optional<OpenWay>> seriesWay(const LineContext& context);
/// Servings by the label's own measure.
[[nodiscard]] std::optional<OpenWay> servingsWay(const LineContext& context);
/// Pieces of what their pack declares.
[[nodiscard]] Result<std::optional<OpenWay>> packWay(const LineContext& context);
[[nodiscard]] std::optional<OpenWay> tableWay(const LineContext& context);
/// By the density that the line states, then by that of a measure of the same food.
[[nodiscard]] std::optional<OpenWay> statedDensityWay(const LineContext& context);
[[nodiscard]] std::optional<OpenWay> measureDensityWay(const LineContext& context);
/// The cook's grams, else the first of a weight as written, the amount said again, and a vague
/// measure.
[[nodiscard]] Result<std::optional<OpenWay>> assumedWay(const LineContext& context);

// Grams of any amount of a unit, without the line's filling; nothing where they cannot be told.
[[nodiscard]] std::optional<OpenWay> byTable(const LineContext& context, const Asked& asked);
[[nodiscard]] std::optional<OpenWay> byStatedDensity(const LineContext& context,
                                                     const Asked& asked);
[[nodiscard]] std::optional<OpenWay> byMeasureDensity(const LineContext& context,
                                                      const Asked& asked);
/// By the stated density, else by that of a measure.
[[nodiscard]] std::optional<OpenWay> byDensity(const LineContext& context, const Asked& asked);

/// Multiplies by how a spoon or cup of the line is filled, where the line says so.
void fillUp(const LineContext& context, OpenWay& way);

/// From purchased to edible: by the line's trim series, else by the table's refuse. NoYield without
/// both.
[[nodiscard]] Result<LinearForm> edibleOf(const LineContext& context, const LinearForm& purchased,
                                          OpenWay& way);

/// From the state that was weighed to that of the food's values by the line's yield, where it has
/// one and is not in that state already; nothing is known of a state that is not given.
[[nodiscard]] Result<LinearForm> inRowState(const LineContext& context, const LinearForm& grams,
                                            std::optional<FoodState> weighedIn, OpenWay& way);

/// Both, for grams as written.
[[nodiscard]] std::optional<Error> bringToRow(const LineContext& context, OpenWay& way);

}  // namespace nettare
