#pragma once

#include <string_view>

#include "core/food/label_facts.h"
#include "core/label/print_rule.h"
#include "core/quantity/interval.h"
#include "core/support/result.h"

namespace nettare {

/// printedInterval() of an amount that was read; nothing where no rounding of the rules prints it.
/// The line is one that labels of these rules have.
[[nodiscard]] std::optional<DecimalInterval> amountsPrintedAs(LabelRules rules,
                                                              const LabelLine& line,
                                                              const PrintedAmount& printed);

/// Half of its last digit to either side; from nothing up to it where it is "less than".
[[nodiscard]] DecimalInterval asWritten(const PrintedAmount& printed);

/// The true amounts, in the line's unit, for which some lawful rounding of the rules prints this
/// text. US: usPrintedInterval(). EU and UK: the Commission guidance of December 2012, which is no
/// law, so that a figure with more digits than it asks for stands for half of its last digit to
/// either side.
/// Fails: LabelAmountUnreadable, LabelAmountImpossible, ComponentUnknown where no label of these
/// rules has such a line; values "found" and "component".
[[nodiscard]] Result<DecimalInterval> printedInterval(LabelRules rules, const LabelLine& line,
                                                      std::string_view printed);

/// The same for one line of a label. Where the cook said that an amount no rounding prints is as
/// printed, it stands for half of its last digit to either side.
[[nodiscard]] Result<DecimalInterval> labelInterval(const LabelFacts& label,
                                                    const LabelAmount& amount);

/// The printed figure without unit and grouping commas: 1200 for "1,200 mg"; where it is "less
/// than", the middle of what it stands for. The text is one that printedInterval() has read.
[[nodiscard]] double printedFigure(const LabelAmount& amount, const DecimalInterval& interval);

/// The true size of a serving that is printed so, in g or mL: by 21 CFR 101.9(b)(7) for the US,
/// else half of the last digit to either side; a figure finer than those steps as well.
[[nodiscard]] DecimalInterval servingInterval(LabelRules rules, Decimal printed);

/// The LabelAssent::about of an amount that no rounding prints: "ENERC_KCAL 52".
[[nodiscard]] std::string notLawfulAbout(const LabelAmount& amount);

}  // namespace nettare
