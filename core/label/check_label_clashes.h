#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/label/check_label.h"
#include "core/label/check_label_numbers.h"

namespace nettare {

/// Amounts of a label that cannot all be right, before it has words and a likely slip.
struct LabelClash {
    LabelFindingKind kind{};
    Interval says, others;  ///< as of LabelFinding
    std::string_view unit;
    std::vector<CheckedLine> lines;  ///< it is about, in the order of a label
    bool serving = false;            ///< the size of the serving is one of them
    bool impossible = false;         ///< as of LabelFinding
};

/// The household measure of a label and what it may hold.
struct MeasureSize {
    Interval size;       ///< of the whole printed amount, by every measure system of such packages
    bool grams = false;  ///< an ounce; else millilitres
    double count = 0;    ///< how many measures
};

/// What a household measure of known size may hold; nothing for cans, slices and other pieces.
[[nodiscard]] std::optional<MeasureSize> measureSize(const LabelFacts& label);

/// What stays the same while amounts are tried.
struct LabelSurroundings {
    const LabelFacts& label;
    std::optional<MeasureSize> measure;
    const std::optional<LikeDensity>& like;
};

/// All clashes but amounts that no rounding prints, in the order of LabelFindingKind.
[[nodiscard]] std::vector<LabelClash> labelClashes(const LabelNumbers& numbers,
                                                   const LabelSurroundings& surroundings);

}  // namespace nettare
