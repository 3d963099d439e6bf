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

inline constexpr std::array<Word<FoodState>, 5> kFoodStateWords{{
    {"raw", FoodState::Raw},
    {"cooked", FoodState::Cooked},
    {"dry", FoodState::Dry},
    {"drained", FoodState::Drained},
    {"with bone", FoodState::WithBone},
}};

inline constexpr std::array<Word<Fill>, 5> kFillWords{{
    {"heaping", Fill::Heaping},
    {"rounded", Fill::Rounded},
    {"generous", Fill::Generous},
    {"level", Fill::Level},
    {"scant", Fill::Scant},
}};

inline constexpr std::array<Word<ToTasteRule>, 2> kToTasteWords{{
    {"left out", ToTasteRule::LeftOut},
    {"a pinch a portion", ToTasteRule::PinchAPortion},
}};

inline constexpr std::array<Word<OptionalRule>, 3> kOptionalWords{{
    {"counted", OptionalRule::Counted},
    {"left out", OptionalRule::LeftOut},
    {"between", OptionalRule::Between},
}};

inline constexpr std::array<Word<RangeRule>, 3> kRangeWords{{
    {"middle", RangeRule::Middle},
    {"least", RangeRule::Least},
    {"most", RangeRule::Most},
}};

/// The key that says what a residue is, in the order of ResidueKind.
inline constexpr std::array<Word<ResidueKind>, 6> kResidueWords{{
    {"line", ResidueKind::Line},
    {"mixture", ResidueKind::Mixture},
    {"drip", ResidueKind::Drip},
    {"unknown", ResidueKind::Unknown},
    {"water", ResidueKind::Water},
    {"not_eaten", ResidueKind::NotEaten},
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

inline constexpr std::array<Word<MeasureSystem>, 5> kSystemWords{{
    {"us", MeasureSystem::UsCustomary},
    {"label", MeasureSystem::UsLabel},
    {"metric", MeasureSystem::Metric},
    {"imperial", MeasureSystem::Imperial},
    {"australian", MeasureSystem::Australian},
}};

/// Unit symbols that a document may use.
inline constexpr std::array<std::string_view, 31> kUnitSymbols{
    "g",       "kg",       "mg",     "oz",        "lb",       "ml",           "mL",     "cl",
    "dl",      "l",        "L",      "tsp",       "tbsp",     "dessertspoon", "cup",    "fl oz",
    "pint",    "quart",    "gal",    "stick",     "pinch",    "dash",         "drop",   "us fl oz",
    "us pint", "us quart", "us gal", "imp fl oz", "imp pint", "imp quart",    "imp gal"};

}  // namespace nettare
