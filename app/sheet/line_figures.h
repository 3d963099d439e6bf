#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "app/session/evaluation.h"
#include "core/publish/sheet_lines.h"

namespace nettare {

/// What the right side of a line's row shows, rounded once for the screen.
struct LineFigures {
    std::string id;
    QString grams, spread;       ///< eaten, and the half-width of its 95 % interval
    QString left;                ///< grams of it that are not eaten; empty for none
    std::optional<Way> way;      ///< nothing for a kept recipe
    QString wayWords;            ///< "series, 6×", "weighed, scaled"
    QString otherWays;           ///< ways that disagree: "table says 31 g"; empty for none
    std::optional<double> kcal;  ///< nothing where a part of it is not known
    double share = 0;            ///< of the energy of all lines
    double shareOfMost = 0;      ///< of the energy of the line that has most
};

/// Of all lines, in their order.
[[nodiscard]] std::vector<LineFigures> lineFigures(const Evaluation& evaluation);

}  // namespace nettare
