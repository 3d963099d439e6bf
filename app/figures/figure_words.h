#pragma once

#include <QString>

#include "app/session/evaluation.h"

namespace nettare {

/// A component as people call it: "Fat", "of which saturated".
[[nodiscard]] QString componentName(Component component);

/// "144", "at least 3.1"; the number alone, in the component's unit.
[[nodiscard]] QString figureValue(const Figure& figure);
/// "± 0.3"; empty for incomplete figures.
[[nodiscard]] QString figureSpread(const Figure& figure);
/// "known for 61 % of the weight"; empty for complete figures.
[[nodiscard]] QString knownFor(const Figure& figure);
/// The whole figure for screen readers: "Fat: 6.6 g, plus or minus 0.3".
[[nodiscard]] QString spokenFigure(const Figure& figure);

/// "A portion of up to 1 skewer is safe.": the largest whole one whose interval keeps to a ceiling
/// per portion; empty for other targets.
[[nodiscard]] QString safePortion(const TargetVerdict& verdict, const Recipe& recipe);

/// Whether a target is kept, by its interval and without a made-up chance: "under the ceiling of
/// 150 kcal with its whole interval". `withBasis` adds what it is per.
[[nodiscard]] QString verdictText(const TargetVerdict& verdict, const Recipe& recipe,
                                  bool withBasis);

/// What figures are per, in words that stand above them: "per portion of 2 skewers".
[[nodiscard]] QString basisName(Basis basis, const Recipe& recipe);

}  // namespace nettare
