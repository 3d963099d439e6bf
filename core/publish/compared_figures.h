#pragma once

#include <limits>
#include <optional>
#include <vector>

#include "core/nutrition/target.h"
#include "core/publish/comparable.h"
#include "core/publish/compared_state.h"
#include "core/publish/source_match.h"

namespace nettare {

/// What can be said of a difference.
enum class DifferenceKind {
    None,          ///< it is zero
    Within,        ///< its 95 % interval holds zero
    Real,          ///< it does not
    NotComparable  ///< the two sides are not of one kind
};

/// One component of two states. What both depend on in the same way cancels, so that the
/// uncertainty of the difference is mostly smaller than that of either side.
struct FigureDifference {
    Figure before, after;
    double difference = 0;  ///< after - before, of the known parts
    double u = 0;           ///< its standard uncertainty
    double freedom = std::numeric_limits<double>::infinity();
    double halfWidth = 0;  ///< 95 %
    DifferenceKind kind = DifferenceKind::None;
    std::optional<NotComparable> notComparable;  ///< why, where it is not
};

/// The differences of all components, in their order; both figures of the same basis.
///
/// Sources of the two sides are one by SourceMatch: what a recipe rests on in both states cancels,
/// how the pieces of two batches scatter does not. u^2 = sum over the union of ((c1 - c2) u)^2.
/// Where one source has another u on each side, such as the mean of a series that got readings
/// more, the smaller part is common (the covariance of two means of nested readings is the variance
/// of the longer one) and the rest is of one side alone.
[[nodiscard]] PerComponent<FigureDifference> comparedFigures(
    const ComparedState& before, const Figures& figuresBefore, const ComparedState& after,
    const Figures& figuresAfter, Batches batches = Batches::ByWeighings);

/// A ceiling or floor of two states; nothing on the side where it is not set. Targets belong
/// together by component, basis and end.
struct TargetChange {
    std::optional<TargetVerdict> before, after;
};
/// In the order of the newer state, then those that only the older has. Fails as verdictsOf().
[[nodiscard]] Result<std::vector<TargetChange>> comparedTargets(const ComparedState& before,
                                                                const ComparedState& after);

/// How far the end of the interval that decides lies beyond the limit, in the component's unit;
/// zero or less where the target is met; nothing where the end is open.
[[nodiscard]] std::optional<double> missedBy(const TargetVerdict& verdict);

}  // namespace nettare
