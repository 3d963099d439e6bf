#pragma once

#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "app/scale/left_over.h"
#include "core/edit/weighing_edits.h"

namespace nettare {

/// What a reading is for.
enum class PurposeKind {
    Line,       ///< the grams of a line
    Series,     ///< a piece or a measure of a line's food
    Cooked,     ///< the finished dish
    NotEaten,   ///< bones, shells, sticks in it
    OtherCook,  ///< the finished dish of one more test cook
    Finished,   ///< one finished piece
    LeftOver,   ///< what stays in bowl or pan
};

struct Purpose {
    PurposeKind kind = PurposeKind::Line;
    std::string line{};                  ///< id, for Line and Series
    std::optional<LeftOver> leftOver{};  ///< for LeftOver: what it is; nothing: not said yet
};

/// The purposes that a draft offers while the cursor is on that line; none without lines. What is
/// left over is that.
[[nodiscard]] std::vector<Purpose> purposesOf(const DraftSession& draft, const std::string& line,
                                              const LeftOver& leftOver);

/// "grams of olive oil", "one prawn, for the series", "the cooked dish"
[[nodiscard]] QString purposeText(const DraftSession& draft, const Purpose& purpose);

/// The same for the edit that binds the reading.
[[nodiscard]] ReadingPurpose readingPurpose(const Purpose& purpose);

/// What lies on the scale then.
[[nodiscard]] WeighedState stateFor(const DraftSession& draft, const Purpose& purpose);

}  // namespace nettare
