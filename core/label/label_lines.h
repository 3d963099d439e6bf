#pragma once

#include <span>
#include <string_view>

#include "core/food/label_facts.h"

namespace nettare {

/// A line of a label as packages of these rules print it.
struct PrintedLine {
    LabelLine line;
    std::string_view called;  ///< "Total Fat", "of which saturates"
    std::string_view unit;    ///< as printed: "g", "mg", "mcg", "kcal", "kJ"; empty for Calories
    int indent = 0;           ///< 0 to 2, as the law's order has it
    bool always = false;      ///< on every package; others are voluntary
};

/// All lines that a label of these rules can have, in the order in which packages print them: 21
/// CFR 101.9(c) and (d); Regulation (EU) 1169/2011, Annex XV.
[[nodiscard]] std::span<const PrintedLine> printedLines(LabelRules rules);

/// The line there; null where labels of these rules have none.
[[nodiscard]] const PrintedLine* printedLine(LabelRules rules, const LabelLine& line);

}  // namespace nettare
