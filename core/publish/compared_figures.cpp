#include "core/publish/compared_figures.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/nutrition/student_t.h"
#include "core/support/json.h"

namespace nettare {

namespace {

/// What a source is called on both sides. A food's own values carry the value as well: another
/// value, or anything else on its label, is another source by the same name.
std::string matchName(const Source& source, const ComparedState& state) {
    std::string name = nameOf(source, state.dossier);
    if (source.key.kind != SourceKind::Composition) return name;
    const auto component = static_cast<Component>(source.key.second);
    const ComponentAmount& amount = state.cooked.compositions[source.key.first][component];
    name += amount.origin == Origin::Label ? "\n" + state.dossier.foods[source.key.first].identity
                                           : "\n" + numberText(amount.perGram);
    return name;
}

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
        return moved * moved + own(before, uBefore) + own(after, uAfter);
    }
};

/// Sources by name; equal names are told apart by their place in the order of sensitivities.
using SharedSources = std::map<std::pair<std::string, std::size_t>, Shared>;

void collect(Component component, const ComparedState& state, const Figures& figures, bool isAfter,
             SharedSources& shared) {
    std::map<std::string, std::vector<Contribution>> named;
    for (const Contribution& part :
         contributionsTo(component, figures.block, state.cooked.compositions))
        named[matchName(part.source, state)].push_back(part);
    for (auto& [name, parts] : named) {
        std::ranges::sort(parts, {}, &Contribution::sensitivity);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            Shared& one = shared[{name, i}];
            (isAfter ? one.after : one.before) = parts[i].sensitivity;
            (isAfter ? one.uAfter : one.uBefore) = parts[i].source.u;
            one.freedom = std::min(one.freedom, parts[i].source.freedom);
            one.pool = nameOf(ownSource(parts[i].source.pool, 0), state.dossier);
        }
    }
}

Uncertainty uncertaintyOfDifference(const SharedSources& shared) {
    std::map<std::string, std::size_t> pools;
    std::vector<BudgetTerm> terms;
    for (const auto& [name, one] : shared) {
        const double variance = one.variance();
        if (variance <= 0) continue;
        const std::size_t pool = pools.emplace(one.pool, pools.size()).first->second;
        terms.push_back({1, std::sqrt(variance), one.freedom, pool});
    }
    return combine(terms);
}

DifferenceKind kindOf(const FigureDifference& found) {
    if (!found.before.complete() || !found.after.complete()) return DifferenceKind::CannotBeTold;
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
                                               const Figures& figuresAfter) {
    PerComponent<FigureDifference> all{};
    for (const ComponentFacts& facts : allComponents()) {
        FigureDifference& found = all[indexOf(facts.component)];
        found.before = figuresBefore[facts.component];
        found.after = figuresAfter[facts.component];
        found.difference = found.after.value - found.before.value;
        SharedSources shared;
        collect(facts.component, before, figuresBefore, false, shared);
        collect(facts.component, after, figuresAfter, true, shared);
        const Uncertainty uncertainty = uncertaintyOfDifference(shared);
        found.u = uncertainty.u;
        found.freedom = uncertainty.freedom;
        if (found.u != 0) found.halfWidth = coverageFactor(found.freedom) * found.u;
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
