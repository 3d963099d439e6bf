#include "core/publish/compared_figures.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/nutrition/student_t.h"

namespace nettare {

namespace {

/// One source with what it does on each side: sensitivities and standard uncertainties.
struct Shared {
    double before = 0, after = 0;
    double uBefore = 0, uAfter = 0;
    double freedom = std::numeric_limits<double>::infinity();
    std::string pool;

    /// Its part of the variance of the difference.
    [[nodiscard]] double variance() const {
        const double common = std::min(uBefore, uAfter);
        const auto own = [&](double c, double u) { return c * c * (u * u - common * common); };
        const double moved = (after - before) * common;
        // In this order, so that both directions give the same digits.
        return moved * moved + (own(before, uBefore) + own(after, uAfter));
    }
};

/// Sources by name; equal names are told apart by their place in the order of sensitivities.
using SharedSources = std::map<std::pair<std::string, std::size_t>, Shared>;

void collect(Component component, const ComparedState& state, const Figures& figures, bool isAfter,
             const SourceMatch& match, SharedSources& shared) {
    std::map<std::string, std::vector<Contribution>> named;
    for (const Contribution& part :
         contributionsTo(component, figures.block, state.cooked.compositions))
        named[match.nameOf(part.source, isAfter)].push_back(part);
    for (auto& [name, parts] : named) {
        std::ranges::sort(parts, {}, &Contribution::sensitivity);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            Shared& one = shared[{name, i}];
            (isAfter ? one.after : one.before) = parts[i].sensitivity;
            (isAfter ? one.uAfter : one.uBefore) = parts[i].source.u;
            one.freedom = std::min(one.freedom, parts[i].source.freedom);
            one.pool = match.nameOf(ownSource(parts[i].source.pool, 0), isAfter);
        }
    }
}

/// Parts of the variance that rest on one estimated s.
struct PooledParts {
    std::vector<double> variances;
    double freedom = std::numeric_limits<double>::infinity();

    [[nodiscard]] double variance() {
        std::ranges::sort(variances);
        double sum = 0;
        for (const double part : variances) sum += part;
        return sum;
    }
};

/// Sums by size, so that both directions give the same digits whatever the sides are called.
Uncertainty uncertaintyOfDifference(const SharedSources& shared) {
    std::map<std::string, PooledParts> pools;
    for (const auto& [name, one] : shared) {
        const double variance = one.variance();
        if (variance <= 0) continue;
        PooledParts& pool = pools[one.pool];
        pool.variances.push_back(variance);
        pool.freedom = std::min(pool.freedom, one.freedom);
    }
    std::vector<std::pair<double, double>> sums;
    sums.reserve(pools.size());
    for (auto& [name, pool] : pools) sums.emplace_back(pool.variance(), pool.freedom);
    std::ranges::sort(sums);
    std::vector<BudgetTerm> terms;
    terms.reserve(sums.size());
    for (const auto& [variance, freedom] : sums)
        terms.push_back({1, std::sqrt(variance), freedom, terms.size()});
    return combine(terms);
}

DifferenceKind kindOf(const FigureDifference& found) {
    if (found.notComparable) return DifferenceKind::NotComparable;
    if (found.difference == 0) return DifferenceKind::None;
    return std::fabs(found.difference) > found.halfWidth ? DifferenceKind::Real
                                                         : DifferenceKind::Within;
}

bool sameTarget(const TargetEntry& a, const TargetEntry& b) {
    return a.component == b.component && a.per == b.per &&
           a.atMost.has_value() == b.atMost.has_value();
}

}  // namespace

PerComponent<FigureDifference> comparedFigures(const ComparedState& before,
                                               const Figures& figuresBefore,
                                               const ComparedState& after,
                                               const Figures& figuresAfter, Batches batches) {
    PerComponent<FigureDifference> all{};
    const SourceMatch match{before, after, batches};
    const Comparability comparability{before, figuresBefore, after, figuresAfter};
    for (const ComponentFacts& facts : allComponents()) {
        FigureDifference& found = all[indexOf(facts.component)];
        found.before = figuresBefore[facts.component];
        found.after = figuresAfter[facts.component];
        found.difference = found.after.value - found.before.value;
        SharedSources shared;
        collect(facts.component, before, figuresBefore, false, match, shared);
        collect(facts.component, after, figuresAfter, true, match, shared);
        const Uncertainty uncertainty = uncertaintyOfDifference(shared);
        found.u = uncertainty.u;
        found.freedom = uncertainty.freedom;
        if (found.u != 0) found.halfWidth = coverageFactor(found.freedom) * found.u;
        found.notComparable = comparability.reasonAgainst(facts.component);
        found.kind = kindOf(found);
    }
    return all;
}

Result<std::vector<TargetChange>> comparedTargets(const ComparedState& before,
                                                  const ComparedState& after) {
    auto older = verdictsOf(before.dossier, before.cooked);
    if (!older) return fail(older.error());
    auto newer = verdictsOf(after.dossier, after.cooked);
    if (!newer) return fail(newer.error());
    std::vector<TargetChange> changes;
    for (const TargetVerdict& verdict : *newer) changes.push_back({std::nullopt, verdict});
    for (const TargetVerdict& verdict : *older) {
        const auto same = std::ranges::find_if(changes, [&](const TargetChange& change) {
            return !change.before && change.after &&
                   sameTarget(change.after->target, verdict.target);
        });
        if (same != changes.end())
            same->before = verdict;
        else
            changes.push_back({verdict, std::nullopt});
    }
    return changes;
}

std::optional<double> missedBy(const TargetVerdict& verdict) {
    if (verdict.target.atLeast) return verdict.target.atLeast->value() - verdict.interval.low;
    if (!verdict.interval.high) return std::nullopt;
    return *verdict.interval.high - verdict.target.atMost->value();
}

}  // namespace nettare
