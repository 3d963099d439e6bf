#pragma once

#include <QString>

#include "core/nutrition/figures.h"
#include "core/publish/path.h"

namespace nettare {

class DraftSession;

/// "Where 144 kcal comes from".
[[nodiscard]] QString pathTitle(const Figure& figure);

/// "energy per portion of 2 skewers, this batch".
[[nodiscard]] QString figureInWords(Component component, const Figures& figures,
                                    const Recipe& recipe);

/// "draft on revision 7", "revision 7" where nothing was changed since, "draft".
[[nodiscard]] QString draftInWords(const DraftSession& draft);

/// "353.4 g": value and unit of a step; empty where it has none.
[[nodiscard]] QString stepValue(const PathStep& step);

/// What stands beside the value: its words and the numbers it was computed of.
[[nodiscard]] QString stepWords(const PathStep& step);

/// A step for screen readers: "353.4 g, plus or minus 7.0: 36 prawns, weighed". `interval` takes
/// the place of the half-width where it is not empty.
[[nodiscard]] QString spokenStep(const PathStep& step, const QString& interval);

/// "139 to 149", rounded outwards to the component's decimals; "139 or more" without an upper end.
[[nodiscard]] QString endsText(Component component, const FigureInterval& interval);

}  // namespace nettare
