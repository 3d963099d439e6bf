#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/nutrition/figures.h"
#include "core/support/json.h"

namespace nettare {

/// What a step of a path is about.
enum class PathKind {
    Figure,    ///< the figure that was asked for
    Division,  ///< batch per pieces or weight
    Batch,     ///< sum of the lines
    Line,      ///< what one line brings: grams x value
    Grams,     ///< grams of a line, or of what is left over
    Reading,   ///< one weighing: gross less tare
    Value,     ///< value of a food per 100 g or per serving
    Kept,      ///< a kept recipe, with a path of its own below
    Missing    ///< nothing is known, or only bounds
};

/// One step of the path of a figure and the steps it follows from. `formula` holds the printed
/// numbers, "353.4 g × 85.0 kcal / 100 g", empty where the step is given and not computed: as
/// printed, first written with 12 significant digits and then rounded with ties up, it gives
/// `value` to its last digit. "sum of the 3 steps below" and "the step below" add the `value` of
/// the steps below as printed; ", rounded down" and ", rounded up" end a formula of a bound.
///
/// Of a figure with missing parts the first step has no formula, "at least 3.1" as its value, the
/// rest in its words, and below it the figures of both ends with a path each.
struct PathStep {
    PathKind kind = PathKind::Figure;
    std::string value;      ///< "300.4", with U+2212 where negative; "at least 3.1"
    std::string unit;       ///< "kcal"
    std::string plusMinus;  ///< 95 % half-width as printed, "16"; empty where it has none
    std::string formula;
    std::string words;  ///< what it is, and where it comes from
    /// Second line: spread, other ways; may be empty. Of the first step what the figure is of:
    /// "energy per skewer of Skewers, this batch".
    std::string more;
    std::optional<Way> way;           ///< for the mark
    std::optional<std::size_t> line;  ///< of the main recipe, where the step is of one
    std::vector<PathStep> below;
};

/// The path of one figure. Figures are those of `cooked`.
[[nodiscard]] PathStep pathOf(Component component, const Figures& figures, const Dossier& dossier,
                              const Cooked& cooked);

/// The path as plain text, a step a line, indented.
[[nodiscard]] std::string pathText(const PathStep& path);
/// For other programs.
[[nodiscard]] Json pathJson(const PathStep& path);

}  // namespace nettare
