#pragma once

#include "core/quantity/interval.h"

#include <optional>
#include <span>
#include <string>

namespace nettare {

/// How the amounts of one band are printed.
enum class PrintKind {
    Zero,      ///< "0"
    LessThan,  ///< "less than" and the band's figure
    Nearest,   ///< the nearest multiple of the band's figure; never 0 in a band from above 0
};

/// One sentence of a rounding rule: the amounts it is about and what it prints for them. Bands of a
/// rule may overlap, where the law leaves the choice.
struct PrintBand {
    PrintKind kind;
    Decimal figure;             ///< Nearest: the step; LessThan: the limit named; Zero: 0
    Decimal from;               ///< >= 0
    bool fromIncluded;          ///< false where the rule says "above"
    std::optional<Decimal> to;  ///< nothing where the band has no upper end
    bool toIncluded;            ///< false where the rule says "below"

    /// Whether the sentence speaks of this amount.
    [[nodiscard]] bool holds(Decimal amount) const;
};

/// A rounding rule. Where bands overlap the first one is what this program prints.
using PrintRule = std::span<const PrintBand>;

/// An amount as a package prints it, without its unit.
struct PrintedAmount {
    bool lessThan = false;  ///< "less than" stands in front of the figure
    Decimal figure{};       ///< in the component's unit, >= 0

    /// "0.5", "120", "less than 1"; trailing zeros after the point are dropped.
    [[nodiscard]] std::string text() const;
    friend bool operator==(const PrintedAmount&, const PrintedAmount&) = default;
};

/// What the rule prints for an amount; nothing where no band holds it. Ties go up: the law sets no
/// rule for them, this is the project's policy.
[[nodiscard]] std::optional<PrintedAmount> printedUnder(PrintRule rule, Decimal amount);

/// The amounts for which some band of the rule prints so, a tie going either way; nothing where no
/// band does. Assumes what holds for every rule here: bands that print the same figure touch.
[[nodiscard]] std::optional<DecimalInterval> amountsPrintedAs(PrintRule rule,
                                                              const PrintedAmount& printed);

/// Half a unit to either side of a figure, never below 0, both ends included.
[[nodiscard]] DecimalInterval halfUnitAround(Decimal figure, Decimal unit);

/// The same number without zeros at the end of its decimals.
[[nodiscard]] Decimal withoutTrailingZeros(Decimal value);

}  // namespace nettare
