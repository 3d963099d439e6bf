#pragma once

#include <string>
#include <vector>

#include "core/food/own_food.h"
#include "core/support/result.h"

namespace nettare {

/// A measure as typed: "1", "cup", "sliced", "87".
struct MeasureEntry {
    std::string amount, unit, qualifier, grams;

    friend bool operator==(const MeasureEntry&, const MeasureEntry&) = default;
};

/// An own food as it is typed. Numbers are decimal text, in the component's unit per 100 g edible
/// portion; an empty one is missing, which is never zero.
struct OwnFoodEntry {
    std::string name;
    std::string refusePercent;
    PerComponent<std::string> per100g{};
    bool plant = false;
    AddedSugarKind addedSugars = AddedSugarKind::BetweenNoneAndAll;
    std::string addedSugarsPer100g;  ///< used by Stated only
    std::string addedSugarsReason;
    std::vector<MeasureEntry> measures;
    std::string source, date, note;
};

/// What a form begins with: the food as text.
[[nodiscard]] OwnFoodEntry entryOf(const OwnFood& own);

/// A copy of a row of a table to begin from: its values, and no source yet. A labelled food leaves
/// its label behind, see withoutLabel(): what is typed into the copy counts.
[[nodiscard]] OwnFood copyOf(const TableFood& row);

/// The food that was typed. What `before` has as well stays to the last digit, with its published
/// spread; what is new takes the relative spread assumed for the food before, else `usualSpread`.
/// Where only one of the two units of energy changed, the other becomes missing, since the two are
/// one fact. A label stays until a value is typed over, then withoutLabel() is what the others are.
/// The row stays that of `before`.
/// Fails: EmptyText, TextTooLong, TextNotClean, NotADecimal, NegativeMass, NotPositive, OutOfRange
/// (more than 100 g of 100 g), NotADate; at "/name", "/components/PROCNT", "/measures/0/grams" ...
[[nodiscard]] Result<OwnFood> ownFoodFrom(const OwnFoodEntry& entry, const OwnFood& before,
                                          const PerComponent<std::optional<double>>& usualSpread);

}  // namespace nettare
