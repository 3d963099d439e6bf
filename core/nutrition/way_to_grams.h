#pragma once

#include <optional>
#include <vector>

#include "core/nutrition/linear_form.h"
#include "core/nutrition/way_explanation.h"

namespace nettare {

/// One way to a line's grams that is open: edible grams as used, before anything is left over.
struct OpenWay {
    Way way = Way::Assumed;
    LinearForm grams;
    std::optional<std::size_t> measure;  ///< index of the table measure, where it rests on one
    int readings = 0;                    ///< of the series, for Series
    bool spreadAssumed = false;          ///< its uncertainty rests on an assumed spread
    bool sizeNotSaid = false;  ///< the size said picks no measure; their range is the uncertainty
    bool scaled = false;       ///< weighed for another amount
    bool trimmed = false;      ///< brought from purchased to edible
    bool wholeLot = false;     ///< every piece of the line was weighed in its series: no scatter
    bool yielded = false;      ///< brought to the state of the food's values
    WayExplanation why;
};

/// A line's ways, best first, and the one that counts.
struct LineGrams {
    std::vector<OpenWay> ways;
    std::size_t chosen = 0;

    [[nodiscard]] const OpenWay& way() const { return ways[chosen]; }
};

/// All open ways of a line of a food, best first: weighed, series, label, table, density, assumed.
/// One kind may be open twice: servings of a label before the content of packs, a stated density
/// before that of a measure. A line to taste opens only what is weighed or assumed.
/// Fails: NoWayToGrams where none is open, WayNotOpen where the cook's choice is not,
/// PiecesNotAmong, NoYield.
[[nodiscard]] Result<LineGrams> waysToGrams(const Dossier& dossier, std::size_t recipe,
                                            std::size_t line);

/// How far an alternative lies from the chosen way, and whether that is more than their
/// uncertainties (k = 2, sources in common cancelled) explain.
struct Disagreement {
    double relative = 0;  ///< (alternative - chosen) / chosen
    bool beyondUncertainty = false;
};
[[nodiscard]] Disagreement disagreement(const OpenWay& chosen, const OpenWay& alternative);

}  // namespace nettare
