#include "core/nutrition/budget.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

Uncertainty fromSums(double squares, double weighted) {
    Uncertainty result;
    result.u = std::sqrt(squares);
    if (weighted > 0) result.freedom = squares * squares / weighted;
    return result;
}

/// v^2 / nu of one pool; zero for infinite freedom.
double weightedTerm(double variance, double freedom) {
    return variance * variance / freedom;
}

/// Sums of u^2 and of v_p^2 / nu_p so far, by component.
struct Sums {
    PerComponent<double> squares{};
    PerComponent<double> weighted{};
};

/// All rows of the pool that begins with that source enter as one term.
void addPool(const Block& block, std::size_t first, Sums& sums) {
    PerComponent<double> variance{};
    for (std::optional<std::size_t> s = first; s; s = block.poolLinks[*s].next) {
        const double* row = &block.sensitivities[*s * kComponentCount];
        const double u = block.sources[*s].uFor(block.meaning);
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            const double part = row[k] * u;
            variance[k] += part * part;
        }
    }
    for (std::size_t k = 0; k < kComponentCount; ++k) sums.squares[k] += variance[k];
    const double freedom = block.sources[first].freedom;
    if (std::isinf(freedom)) return;
    for (std::size_t k = 0; k < kComponentCount; ++k)
        sums.weighted[k] += weightedTerm(variance[k], freedom);
}

/// A food's own composition; each of its sources stands for itself.
void addComposition(const Composition& composition, const Block& block, const Block::FoodPart& part,
                    Sums& sums) {
    const double all = part.grams * block.scale;
    for (const CompositionSource& source : composition.sources)
        for (const Effect& effect : source.effects) {
            const std::size_t k = indexOf(effect.component);
            const double grams = part.drip == 0 ? all : block.gramsFor(part, k) * block.scale;
            const double size = grams * effect.perGram * source.source.uFor(block.meaning);
            sums.squares[k] += size * size;
            sums.weighted[k] += weightedTerm(size * size, source.source.freedom);
        }
}

}  // namespace

Uncertainty combine(const std::vector<BudgetTerm>& terms) {
    std::vector<std::pair<std::size_t, BudgetTerm>> pools;  // variance of a pool kept in u
    for (const BudgetTerm& term : terms) {
        const double part = term.sensitivity * term.u;
        const auto found =
            std::ranges::find(pools, term.pool, &std::pair<std::size_t, BudgetTerm>::first);
        if (found != pools.end())
            found->second.u += part * part;
        else
            pools.push_back({term.pool, {1, part * part, term.freedom, term.pool}});
    }
    double squares = 0;
    double weighted = 0;
    for (const auto& [pool, term] : pools) {
        squares += term.u;
        weighted += weightedTerm(term.u, term.freedom);
    }
    return fromSums(squares, weighted);
}

Uncertainty uncertaintyOf(const LinearForm& form) {
    std::vector<SourceKey> pools;
    std::vector<BudgetTerm> terms;
    for (const LinearForm::Term& term : form.terms()) {
        const auto found = std::ranges::find(pools, term.source.pool);
        terms.push_back({term.sensitivity, term.source.u, term.source.freedom,
                         static_cast<std::size_t>(found - pools.begin())});
        if (found == pools.end()) pools.push_back(term.source.pool);
    }
    return combine(terms);
}

PerComponent<Uncertainty> budgetOf(const Block& block,
                                   const std::vector<Composition>& compositions) {
    Sums sums;
    for (std::size_t s = 0; s < block.sources.size(); ++s)
        if (block.poolLinks[s].first) addPool(block, s, sums);
    for (const Block::FoodPart& part : block.foods)
        addComposition(compositions[part.food], block, part, sums);
    PerComponent<Uncertainty> result{};
    for (std::size_t k = 0; k < kComponentCount; ++k)
        result[k] = fromSums(sums.squares[k], sums.weighted[k]);
    return result;
}

std::vector<Contribution> contributionsTo(Component component, const Block& block,
                                          const std::vector<Composition>& compositions) {
    std::vector<Contribution> all;
    const auto take = [&](Source source, double sensitivity) {
        source.u = source.uFor(block.meaning);
        if (sensitivity != 0 && source.u != 0) all.push_back({source, sensitivity});
    };
    for (std::size_t s = 0; s < block.sources.size(); ++s) {
        const double sensitivity = block.sensitivities[s * kComponentCount + indexOf(component)];
        take(block.sources[s], sensitivity);
    }
    for (const Block::FoodPart& part : block.foods)
        for (const CompositionSource& source : compositions[part.food].sources)
            for (const Effect& effect : source.effects)
                if (effect.component == component)
                    take(source.source,
                         block.gramsFor(part, indexOf(component)) * block.scale * effect.perGram);
    return all;
}

}  // namespace nettare
