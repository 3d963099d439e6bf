#pragma once

#include <array>

#include "core/food/label_facts.h"
#include "core/support/json_reader.h"

namespace nettare {

// Words of labels in documents.

inline constexpr std::array<Word<LabelRules>, 2> kLabelRulesWords{
    {{"us", LabelRules::Us}, {"eu", LabelRules::Eu}}};

inline constexpr std::array<Word<LabelPer>, 3> kLabelPerWords{{
    {"serving", LabelPer::Serving},
    {"100g", LabelPer::HundredGrams},
    {"100ml", LabelPer::HundredMillilitres},
}};

inline constexpr std::array<Word<LabelState>, 3> kLabelStateWords{{
    {"as-sold", LabelState::AsSold},
    {"prepared", LabelState::Prepared},
    {"drained", LabelState::Drained},
}};

inline constexpr std::array<Word<LabelFindingKind>, 9> kLabelFindingWords{{
    {"not-lawful", LabelFindingKind::NotLawful},
    {"energy", LabelFindingKind::Energy},
    {"kilojoules", LabelFindingKind::KilojoulesDiffer},
    {"fat-parts", LabelFindingKind::FatParts},
    {"carbohydrate-parts", LabelFindingKind::CarbohydrateParts},
    {"added-sugars", LabelFindingKind::AddedSugars},
    {"salt", LabelFindingKind::SaltDiffers},
    {"too-heavy", LabelFindingKind::TooHeavy},
    {"unlike-measure", LabelFindingKind::UnlikeMeasure},
}};

}  // namespace nettare
