#pragma once

#include <array>
#include <optional>

#include "core/food/label_facts.h"
#include "core/label/print_rule.h"
#include "core/quantity/interval.h"

namespace nettare {

/// The lines that checks of a label compare, in the order in which a finding names them: what the
/// others make or are part of in front.
enum class CheckedLine : unsigned char {
    Kilocalories,
    Kilojoules,
    Fat,
    Saturates,
    Trans,
    Mono,
    Poly,
    Carbohydrate,  ///< with fibre on labels of the US, without on those of the EU and the UK
    Fibre,
    Sugars,
    AddedSugars,
    Polyols,
    Starch,
    Protein,
    Salt,
    Sodium,
    Alcohol,
};

inline constexpr std::size_t kCheckedLineCount = 17;

/// The checked line that this is on labels of the rules; nothing for vitamins, minerals and
/// cholesterol, against which nothing is checked.
[[nodiscard]] std::optional<CheckedLine> checkedLine(LabelRules rules, const LabelLine& line);
/// The line of a label that it is under the rules.
[[nodiscard]] LabelLine labelLine(LabelRules rules, CheckedLine line);

/// Sums of doubles; far below every step that a label prints.
inline constexpr double kSameGrams = 1e-9;

/// A label as numbers: for each line the true amounts that it may stand for, in the line's unit.
struct LabelNumbers {
    LabelRules rules{};
    std::array<std::optional<Interval>, kCheckedLineCount> lines{};
    std::array<double, kCheckedLineCount> printed{};  ///< the figures themselves
    std::optional<Interval> grams;    ///< that the amounts are of; nothing where it is not known
    bool ofVolume = false;            ///< those amounts are of millilitres: of a drink or a sauce
    bool perServing = false;          ///< those grams are of the printed serving
    std::optional<Interval> serving;  ///< its true size, in g or mL

    [[nodiscard]] const std::optional<Interval>& operator[](CheckedLine line) const {
        return lines[static_cast<std::size_t>(line)];
    }
    /// Whether a line in grams is more than all the grams it is of, however both were rounded.
    [[nodiscard]] bool isMoreThanAll(CheckedLine line) const;
    /// Gives a line another amount; false where no rounding of the rules prints it.
    bool setLine(CheckedLine line, const PrintedAmount& amount);
    /// Gives the serving another printed size.
    void setServing(const LabelFacts& label, Decimal printed);
};

/// The grams that the amounts may be of, least and most: the serving by its rounding, millilitres
/// by their density; nothing where one of them is not known.
[[nodiscard]] std::optional<Interval> gramsHeld(const LabelFacts& label);

/// The numbers of a label. Lines that cannot be read are left out; an amount that no rounding
/// prints stands for half of its last digit to either side.
[[nodiscard]] LabelNumbers labelNumbers(const LabelFacts& label);

}  // namespace nettare
