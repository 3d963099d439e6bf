#pragma once

#include <optional>

#include "core/nutrition/way_to_grams.h"

namespace nettare {

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
};

// Each answers the way if it is open, nothing if it is not, or the error that makes the line wrong.

[[nodiscard]] Result<std::optional<OpenWay>> weighedWay(const LineContext& context);
[[nodiscard]] Result<std::optional<OpenWay>> seriesWay(const LineContext& context);
[[nodiscard]] std::optional<OpenWay> labelWay(const LineContext& context);
[[nodiscard]] std::optional<OpenWay> tableWay(const LineContext& context);
[[nodiscard]] std::optional<OpenWay> densityWay(const LineContext& context);
[[nodiscard]] Result<std::optional<OpenWay>> assumedWay(const LineContext& context);

/// `each` grams for every unit of the line's amount; a range of amounts becomes a rectangle.
[[nodiscard]] LinearForm gramsFor(const LineContext& context, const LinearForm& each);

/// From purchased to edible: by the line's trim series, else by the table's refuse. NoYield without
/// both.
[[nodiscard]] Result<LinearForm> trimmed(const LineContext& context, const LinearForm& purchased);

}  // namespace nettare
