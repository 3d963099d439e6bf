#pragma once

#include <optional>
#include <random>

#include "core/food/label_facts.h"

namespace nettare {

/// A label with one figure mistyped.
struct SlippedLabel {
    LabelFacts label;
    LabelLine line;
    std::string right;  ///< as it was before
};

/// One digit of one line is another, is dropped, typed twice or exchanged with its neighbour, or
/// the decimal point is lost; the first of these six times in ten. The energy, fat, carbohydrate
/// or protein, each as often. Nothing where the text cannot slip so, or no figure comes out.
[[nodiscard]] std::optional<SlippedLabel> slipped(const LabelFacts& label, std::mt19937& random);

/// What the slip moves, in kcal, and how much of that the label itself leaves open: the width of
/// the four intervals of energy, fat, carbohydrate and protein before and after.
struct SlipSize {
    double moved = 0, open = 0;
    double energy = 0;  ///< kcal of the right label, as printed
};
[[nodiscard]] SlipSize sizeOfSlip(const SlippedLabel& slip);

}  // namespace nettare
