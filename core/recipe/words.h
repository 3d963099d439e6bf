#pragma once

#include <array>

#include "core/recipe/recipe_document.h"
#include "core/support/json_reader.h"

namespace nettare {

// The words that documents use for the states of this folder's types, in one place. The published
// schema lists the same; a test compares the two.

inline constexpr std::array<Word<WeighedState>, 5> kStateWords{{
    {"empty", WeighedState::Empty},
    {"as purchased", WeighedState::AsPurchased},
    {"edible portion", WeighedState::EdiblePortion},
    {"cooked", WeighedState::Cooked},
    {"residue", WeighedState::Residue},
}};

inline constexpr std::array<Word<SeriesKind>, 3> kSeriesWords{{
    {"per piece", SeriesKind::PerPiece},
    {"per measure", SeriesKind::PerMeasure},
    {"ratio", SeriesKind::Ratio},
}};

inline constexpr std::array<Word<SeriesUse>, 2> kUseWords{{
    {"others", SeriesUse::Others},
    {"among", SeriesUse::Among},
}};

inline constexpr std::array<Word<Way>, 6> kWayWords{{
    {"weighed", Way::Weighed},
    {"series", Way::Series},
    {"label", Way::Label},
    {"table", Way::Table},
    {"density", Way::Density},
    {"assumed", Way::Assumed},
}};

inline constexpr std::array<Word<Basis>, 4> kBasisWords{{
    {"piece", Basis::Piece},
    {"portion", Basis::Portion},
    {"100g", Basis::Hundred},
    {"batch", Basis::Batch},
}};

inline constexpr std::array<Word<AddedSugarKind>, 4> kAddedSugarWords{{
    {"none", AddedSugarKind::None},
    {"all", AddedSugarKind::AllOfItsSugars},
    {"stated", AddedSugarKind::Stated},
    {"between", AddedSugarKind::BetweenNoneAndAll},
}};

inline constexpr std::array<Word<MeasureSystem>, 3> kSystemWords{{
    {"us", MeasureSystem::UsCustomary},
    {"label", MeasureSystem::UsLabel},
    {"metric", MeasureSystem::Metric},
}};

inline constexpr std::array<Word<LabelRules>, 1> kRulesWords{{{"us", LabelRules::Us}}};

/// Unit symbols that a document may use.
inline constexpr std::array<std::string_view, 12> kUnitSymbols{
    "g", "kg", "mg", "oz", "lb", "ml", "mL", "l", "L", "tsp", "tbsp", "cup"};

}  // namespace nettare
