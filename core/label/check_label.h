#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_facts.h"
#include "core/quantity/interval.h"

namespace nettare {

/// What was likely meant: one digit slipped, a decimal point, two digits changed places.
struct LabelSlip {
    std::optional<LabelLine> line;  ///< nothing: the size of the serving
    std::string printed;            ///< as it stands in the label
    std::string instead;            ///< as it likely is on the package
};

/// Amounts of a label that cannot all be right, however they were rounded and whatever lawful
/// method gave the energy.
struct LabelFinding {
    LabelFindingKind kind{};
    /// The amounts it is about, the one to mark first in front; empty: the serving alone.
    std::vector<LabelLine> lines;
    bool serving = false;  ///< the size of the serving is one of them
    /// What the label says, as an interval, and what the others make of it, in `unit`: 95 to 105
    /// kcal against 243 to 342. Not used by NotLawful.
    Interval says, others;
    std::string unit;
    std::string like;  ///< UnlikeMeasure: LikeDensity::of; empty where no like foods were given
    std::optional<LabelSlip> slip;  ///< the likeliest one; nothing where none explains it
    /// The amounts as text, for an assent, in an order of their own whatever stands in front:
    /// "ENERC_KCAL 100, FAT 0, CHOCDF 60, PROCNT 18".
    std::string about;
    /// Of parts or weight, and one of its lines alone is more than the serving, or 100 g, weighs:
    /// no food is so, and no assent settles it. Where such a line is, one finding says so.
    bool impossible = false;
    bool assented = false;  ///< the cook said "it is as printed"
};

/// What a millilitre of like foods weighs, least and most, and whose measures say so. A measure is
/// unlike them below half of the least and above twice the most.
struct LikeDensity {
    double least = 0, most = 0;  ///< g per mL
    std::string of;              ///< "12 measures of yogurt"
};

/// All findings of a label, assented ones too; in the order of LabelFindingKind. Amounts that
/// cannot be read make no finding here: printedInterval() refuses them. Pure; under a millisecond.
[[nodiscard]] std::vector<LabelFinding> checkLabel(const LabelFacts& label,
                                                   const std::optional<LikeDensity>& like = {});

/// The label with the likely slip put right.
[[nodiscard]] LabelFacts withSlip(const LabelFacts& label, const LabelSlip& slip);

/// The label with "it is as printed" for the finding; as it was where that is impossible.
[[nodiscard]] LabelFacts withAssent(const LabelFacts& label, const LabelFinding& finding);

}  // namespace nettare
