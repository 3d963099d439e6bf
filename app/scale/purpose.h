#pragma once

#include <QString>

#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "core/edit/weighing_edits.h"

namespace nettare {

/// What a reading is for.
enum class PurposeKind {
    Line,         ///< the grams of a line
    Series,       ///< a piece or a measure of a line's food
    Cooked,       ///< the finished dish
    NotEaten,     ///< bones, shells, sticks in it
    LeftMixture,  ///< left in the bowl, of the lines that are mixed there
    LeftOfLine,   ///< left of one line
    LeftUnknown,  ///< left over, nobody knows of what
};

struct Purpose {
    PurposeKind kind = PurposeKind::Line;
    std::string line;  ///< id, for Line, Series and LeftOfLine
    friend bool operator==(const Purpose&, const Purpose&) = default;
};

/// The purposes that a draft offers while the cursor is on that line; none without lines.
[[nodiscard]] std::vector<Purpose> purposesOf(const DraftSession& draft, const std::string& line);

/// "grams of olive oil", "one prawn, for the series", "the cooked dish"
[[nodiscard]] QString purposeText(const DraftSession& draft, const Purpose& purpose);

/// The same for the edit that binds the reading.
[[nodiscard]] ReadingPurpose readingPurpose(const DraftSession& draft, const Purpose& purpose);

/// What lies on the scale then.
[[nodiscard]] WeighedState stateFor(const DraftSession& draft, const Purpose& purpose);

}  // namespace nettare
