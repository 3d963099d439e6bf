#include <algorithm>
#include <utility>

#include "core/simulation/figure_model.h"

namespace nettare {

namespace {

constexpr double kFewFreedom = 4;

/// Of the variance. An s of one degree of freedom may come out ten times too small, and
/// Welch-Satterthwaite then trusts the rest; intervals held the truth in 89 % of kitchens instead
/// of 95 % (tests/core/simulation/test_coverage.cpp).
constexpr double kSmallShare = 0.01;

double sumOfShares(const std::vector<Contribution>& parts) {
    double all = 0;
    for (const Contribution& part : parts) all += part.share();
    return all;
}

bool oneRectangleRules(const std::vector<Contribution>& parts, double variance) {
    return std::ranges::any_of(parts, [&](const Contribution& part) {
        return part.source.law == Law::Rectangle && part.share() > variance / 2;
    });
}

bool fewReadingsMatter(const std::vector<Contribution>& parts, double variance) {
    std::vector<std::pair<SourceKey, double>> pools;
    for (const Contribution& part : parts) {
        if (part.source.freedom >= kFewFreedom) continue;
        auto pool =
            std::ranges::find(pools, part.source.pool, &std::pair<SourceKey, double>::first);
        if (pool == pools.end()) pool = pools.insert(pool, {part.source.pool, 0.0});
        pool->second += part.share();
    }
    return std::ranges::any_of(
        pools, [&](const auto& pool) { return pool.second > kSmallShare * variance; });
}

}  // namespace

std::optional<SimulationReason> reasonToSimulate(Component component, const Figures& figures,
                                                 const Cooked& cooked) {
    const auto parts = contributionsTo(component, figures.block, cooked.compositions);
    const double variance = sumOfShares(parts);
    if (oneRectangleRules(parts, variance)) return SimulationReason::Rectangle;
    if (figures[component].freedom < kFewFreedom || fewReadingsMatter(parts, variance))
        return SimulationReason::FewReadings;
    return std::nullopt;
}

// The ends as they are, before missing parts and before they are cut at zero.
std::optional<SimulationReason> reasonToShow(Component component, const Figures& figures,
                                             const Cooked& cooked, const Simulation& simulation) {
    if (const auto reason = reasonToSimulate(component, figures, cooked)) return reason;
    const Figure& figure = figures[component];
    const double half = intervalOf(figure).halfWidth;
    if (agree(figure.u, figure.value - half, figure.value + half, simulation)) return std::nullopt;
    return SimulationReason::Disagreement;
}

FigureInterval intervalOf(const Figure& figure, const Simulation& simulation) {
    FigureInterval interval;
    interval.low = std::max(0.0, simulation.low + (figure.atLeast - figure.value));
    if (figure.atMost)
        interval.high = std::max(0.0, simulation.high + (*figure.atMost - figure.value));
    interval.halfWidth = (simulation.high - simulation.low) / 2;
    return interval;
}

}  // namespace nettare
