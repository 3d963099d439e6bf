#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_line.h"
#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// Whose rules a package was printed under: 21 CFR 101.9, or Regulation (EU) 1169/2011, which the
/// United Kingdom kept.
enum class LabelRules { Us, Eu };

/// What the printed amounts are of.
enum class LabelPer { Serving, HundredGrams, HundredMillilitres };

/// Of the product in which state they speak.
enum class LabelState {
    AsSold,
    Prepared,  ///< by the directions of the package: cooked, dissolved, with what is added
    Drained,   ///< without the liquid it is packed in
};

/// One line of a label, as printed and without the unit: "120", "0", "0.5", "less than 1", "<5".
struct LabelAmount {
    LabelLine line;
    std::string printed;

    friend bool operator==(const LabelAmount&, const LabelAmount&) = default;
};

/// What one millilitre of the product weighs: needed where a label speaks of millilitres.
struct LabelDensity {
    Decimal gramsPerMl;  ///< > 0
    Decimal within;      ///< half-width of a rectangle; >= 0

    friend bool operator==(const LabelDensity&, const LabelDensity&) = default;
};

/// A photograph of the package, which the kitchen keeps by its hash.
struct LabelPhoto {
    std::string sha256;    ///< of its bytes: 64 lower-case hexadecimal digits
    std::string fileName;  ///< as it was called, without folders

    friend bool operator==(const LabelPhoto&, const LabelPhoto&) = default;
};

/// What a check of a label can find.
enum class LabelFindingKind {
    NotLawful,          ///< no rounding of the rules prints that amount
    Energy,             ///< by no lawful method of the other amounts
    KilojoulesDiffer,   ///< from the kilocalories, each with its own factors
    FatParts,           ///< more than the fat
    CarbohydrateParts,  ///< sugars, fibre (US), polyols, starch: more than the carbohydrate
    AddedSugars,        ///< more than the sugars
    SaltDiffers,        ///< from sodium x 2.5
    TooHeavy,           ///< more than the serving, or 100 g, weighs
    UnlikeMeasure,      ///< the household measure weighs other than like foods
};

/// "It is as printed": a finding that the cook has seen. It holds as long as nothing it is about
/// changes.
struct LabelAssent {
    LabelFindingKind kind{};
    std::string about;  ///< LabelFinding::about

    friend bool operator==(const LabelAssent&, const LabelAssent&) = default;
};

/// What a package declares: "1 tbsp (14 g)" and its rounded amounts. What it does not print is
/// missing.
struct LabelFacts {
    LabelRules rules = LabelRules::Us;
    /// The 14 of "1 tbsp (14 g)", as printed, in g or mL; > 0. Needed where amounts are per
    /// serving.
    std::optional<Decimal> servingSize{};
    std::optional<Amount> householdAmount{};  ///< the 1 of "1 tbsp"; needs a serving size
    std::string householdUnit{};  ///< the tbsp of "1 tbsp"; a piece word where it counts pieces
    std::vector<LabelAmount> amounts{};  ///< in the order of the package
    LabelPer per = LabelPer::Serving;
    LabelState state = LabelState::AsSold;
    bool servingInMillilitres = false;      ///< else in grams
    std::optional<LabelDensity> density{};  ///< needed where serving or `per` is in mL
    std::string servingsPerPack{};          ///< as printed: "about 4"; may be empty
    std::string date{};                     ///< when it was read: "2026-05-16"; may be empty
    /// Relative half-width by which the product may differ from its declaration, beyond rounding;
    /// nothing: that of the recipe, which is 0 unless the cook says otherwise.
    std::optional<Decimal> declarationSpread{};
    std::optional<LabelPhoto> photo{};
    std::vector<LabelAssent> assents{};

    /// The printed text of a line; null where the label has no such line.
    [[nodiscard]] const std::string* printed(const LabelLine& line) const;
    /// Whether it speaks of millilitres anywhere.
    [[nodiscard]] bool needsDensity() const {
        return per == LabelPer::HundredMillilitres || (servingSize && servingInMillilitres);
    }
};

}  // namespace nettare
