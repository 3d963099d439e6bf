#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_facts.h"
#include "core/food/own_food.h"
#include "core/support/result.h"

namespace nettare {

/// A label as it is typed from a package. An empty text is not printed there: missing, never zero.
struct LabelTyped {
    std::string name;
    LabelRules rules = LabelRules::Us;
    LabelPer per = LabelPer::Serving;
    LabelState state = LabelState::AsSold;
    std::string household;    ///< "1 tbsp", "2/3 cup"
    std::string servingSize;  ///< "14", "14 g", "240 mL"; a unit here comes before the next member
    bool servingInMillilitres = false;
    std::string servingsPerPack;       ///< "about 4"
    std::string gramsPerMl;            ///< "1.03"
    std::string densityWithin;         ///< "0.01"; empty: half of the last digit of gramsPerMl,
                                       ///< at most 0.05
    std::vector<LabelAmount> amounts;  ///< in the order of the package; empty ones pass
    AddedSugarKind addedSugars = AddedSugarKind::BetweenNoneAndAll;
    std::string addedSugarsPer100g;  ///< g; used by Stated only
    std::string addedSugarsReason;
    bool plant = false;
    std::string declarationSpreadPercent;  ///< empty: rounding only, unless the recipe says more
    std::string date;                      ///< "2026-05-16"
    std::string note;
    std::optional<LabelPhoto> photo;
    std::vector<LabelAssent> assents;

    friend bool operator==(const LabelTyped&, const LabelTyped&) = default;
};

/// What the next pack of a labelled food begins with: the version as it was typed.
[[nodiscard]] LabelTyped typedLabelOf(const OwnFood& own);

/// The facts as far as they can be read, for looking at a label while it is typed.
[[nodiscard]] LabelFacts factsSoFar(const LabelTyped& typed);

/// The size of the serving without its unit: "240" of "240 mL".
[[nodiscard]] std::string servingNumber(const LabelTyped& typed);

/// Whether the size of the serving is in millilitres, by its own unit or by the choice beside it.
[[nodiscard]] bool isInMillilitres(const LabelTyped& typed);

/// The food of that package: its label, and as profile what that comes to per 100 g. The row stays
/// that of `before`; assents that nothing in the label asks for any more are left out.
/// Fails like readLabel() and labelFrom(), like labelValues(), as addedSugarsRefusal() says, and
/// with EmptyText, TextTooLong, TextNotClean, OutOfRange, NotADate; at "/name",
/// "/label/serving_grams",
/// "/label/declares/ENERC_KCAL", "/added_sugars/reason" ...
[[nodiscard]] Result<OwnFood> labelledFoodFrom(const LabelTyped& typed, const OwnFood& before);

}  // namespace nettare
