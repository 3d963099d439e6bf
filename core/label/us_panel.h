#pragma once

#include "core/food/component.h"
#include "core/label/open_amount.h"
#include "core/label/panel.h"
#include "core/support/result.h"

#include <string>

namespace nettare {

/// What a US panel is made from.
struct UsPanelInput {
    PerComponent<OpenAmount> perServing;  ///< unrounded, in each component's unit
    double servings = 0;                  ///< in the whole recipe or container, > 0
    std::string household;                ///< the serving in household measure: "2 skewers"
    double servingGrams = 0;              ///< > 0
    bool polyAndMono = false;             ///< also the two voluntary fat lines, (c)(2)(iii), (iv)
};

/// The Nutrition Facts panel in the vertical format of 21 CFR 101.9(d): its lines, order, indents
/// and footnote (d)(9). A line prints where both ends of its amount give the same amount and the
/// same percent.
/// Fails: PanelLineOpen otherwise, with values "line", "at_least", "at_most" (or "unknown"), "unit"
/// and a "food" for each food that leaves it open; EmptyText without a household text; NotPositive
/// or OutOfRange for servings, grams and amounts; RangeReversed where an amount's ends are.
[[nodiscard]] Result<Panel> usPanel(const UsPanelInput& input);

}  // namespace nettare
