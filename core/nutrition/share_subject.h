#pragma once

#include <optional>
#include <tuple>
#include <vector>

#include "core/nutrition/budget_share.h"

namespace nettare {

/// What of a kitchen a source is about.
enum class SubjectOf : std::uint8_t {
    LineReadings,    ///< index = number of the line
    CommonReadings,  ///< an empty scale or a bowl that several things were weighed on
    Vessel,
    Scale,
    Series,
    Residue,  ///< index = number of the residue
    Dish,     ///< the cooked weight; index = recipe
    FoodLabel,
    FoodTable,
    FoodStated,
    FoodMeasure,
    FoodRefuse,
    Line,         ///< what its amount leaves open, `aspect` says what; index = number of the line
    MakeUp,       ///< of a residue; index = its number
    Pinch,        ///< one for all
    PiecesMade,   ///< index = recipe
    ShareOfPiece  ///< one
};

/// Sources of one subject are one thing to a cook.
struct ShareSubject {
    SubjectOf of = SubjectOf::CommonReadings;
    std::uint32_t index = 0;
    SourceKind aspect = SourceKind::Rounding;  ///< of Line alone

    friend bool operator==(const ShareSubject&, const ShareSubject&) = default;
    friend bool operator<(const ShareSubject& a, const ShareSubject& b) {
        return std::tie(a.of, a.index, a.aspect) < std::tie(b.of, b.index, b.aspect);
    }
};

/// What every indication of a dossier was read for: its gross decides, a tare is that of what it
/// was subtracted from, or common to several.
[[nodiscard]] std::vector<ShareSubject> subjectsOfIndications(const Dossier& dossier);

[[nodiscard]] ShareSubject subjectOf(const Source& source, const Cooked& cooked,
                                     const std::vector<ShareSubject>& ofIndications);

/// What can be done about it.
[[nodiscard]] ShareKind kindOf(const ShareSubject& subject);

}  // namespace nettare
