#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_facts.h"
#include "core/food/measure.h"
#include "core/food/profile.h"

namespace nettare {

/// The identity of a row in a public table: table, release and the number as printed (keep leading
/// zeros): {"usda-sr", "28", "11957"}.
struct TableRow {
    std::string table;
    std::string release;
    std::string number;

    friend bool operator==(const TableRow&, const TableRow&) = default;
    /// "usda-sr 28 11957"
    [[nodiscard]] std::string text() const { return table + " " + release + " " + number; }
};

/// What part of a food's sugars counts as added (21 CFR 101.9(c)(6)(iii) counts sugars added in
/// processing, and syrups, honey and sugar themselves).
enum class AddedSugarKind {
    None,               ///< known even where SUGAR is missing
    AllOfItsSugars,     ///< sugar, honey, syrup; missing where SUGAR is
    Stated,             ///< an amount with its reason
    BetweenNoneAndAll,  ///< cannot be told: bounds 0 and SUGAR
};

/// The added sugars of one food.
struct AddedSugars {
    AddedSugarKind kind = AddedSugarKind::None;
    double statedPer100g = 0;  ///< g; used by Stated only
    std::string reason;        ///< why, for the cook
};

/// One food of a public table, or of a kitchen's own, with all that its row says.
struct TableFood {
    TableRow row;
    std::string name;                     ///< as the table prints it
    std::string group;                    ///< the table file's own grouping: "vegetable", "oil" ...
    std::optional<double> refusePercent;  ///< of the weight as purchased
    std::string refuseNote;               ///< what the refuse is: "shell and tail"
    /// Unhydrogenated plant food: a missing FATRN is zero by kind (visible rule).
    bool plant = false;
    ConversionFactors factors;
    Profile profile;
    AddedSugars addedSugars;
    std::vector<HouseholdMeasure> measures;
    std::vector<std::string> otherNames;  ///< that a search finds it by as well
    /// Of a product whose package was read: figures go by it, and `profile` is what it comes to.
    std::optional<LabelFacts> label;
};

}  // namespace nettare
