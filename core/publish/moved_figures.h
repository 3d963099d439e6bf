#pragma once

#include <string>
#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// A published figure that would come out beyond its own rounding.
struct MovedFigure {
    Component component{};
    Basis basis = Basis::Portion;
    bool onPanel = false;       ///< a line of the US panel, per portion; else of the figures page
    std::string before, after;  ///< as printed, with the unit: "144 kcal", "at least 3.1 g"
    double valueBefore = 0, valueAfter = 0;  ///< unrounded, in the component's unit
};

/// The figures that move between two dossiers of one recipe, `after` with another version of a
/// food: those whose unrounded value afterwards lies outside the values that the print before
/// stands for. Per piece, portion and 100 g by the decimals of the figures page, a figure with
/// missing parts by its bounds; the lines of the US panel, where it printed, by what their print
/// lawfully stands for. In the order of bases and components. Fails like cook().
[[nodiscard]] Result<std::vector<MovedFigure>> movedFigures(const Dossier& before,
                                                            const Dossier& after);

/// What moved is per: "per portion", "on the panel".
[[nodiscard]] std::string placeText(const MovedFigure& moved, const Recipe& recipe);

}  // namespace nettare
