#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/publish/compared_state.h"
#include "core/publish/sheet_lines.h"

namespace nettare {

/// What became of a line.
enum class LineChange { Same, Changed, Added, Removed };

/// A line of two states side by side; nothing on the side where it is not.
struct ComparedLine {
    LineChange change = LineChange::Same;
    std::optional<SheetLine> before, after;
    double gramsDifference = 0;  ///< after - before; a missing side counts as none
    double kcalDifference = 0;   ///< of the known parts
    bool kcalComplete = true;    ///< on both sides
};

/// Lines belong together by their id, else by their food. They come in the order of the newer
/// state, with removed ones after the line that they followed. Changed is what shows: amount, name,
/// preparation, way, or a difference of 0.1 g or 1 kcal as they are written.
[[nodiscard]] std::vector<ComparedLine> comparedLines(const ComparedState& before,
                                                      const ComparedState& after);

}  // namespace nettare
