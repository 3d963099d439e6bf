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

/// Rows of a block grouped by pool, in the order of their first row.
struct Pools {
    struct Pool {
        SourceKey key;
        double freedom;
        PerComponent<double> variance{};
    };
    std::vector<Pool> pools;

    PerComponent<double>& of(const Source& source) {
        const auto found = std::ranges::find(pools, source.pool, &Pool::key);
        if (found != pools.end()) return found->variance;
        pools.push_back({source.pool, source.freedom, {}});
        return pools.back().variance;
    }
};

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
    PerComponent<double> squares{};
    PerComponent<double> weighted{};
    Pools pools;
    for (std::size_t s = 0; s < block.sources.size(); ++s) {
        PerComponent<double>& variance = pools.of(block.sources[s]);
        const double* row = &block.sensitivities[s * kComponentCount];
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            const double part = row[k] * block.sources[s].u;
            variance[k] += part * part;
        }
    }
    for (const Pools::Pool& pool : pools.pools)
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            squares[k] += pool.variance[k];
            weighted[k] += weightedTerm(pool.variance[k], pool.freedom);
        }
    for (const Block::FoodPart& part : block.foods) {
        const double grams = part.grams * block.scale;
        for (const CompositionSource& source : compositions[part.food].sources)
            for (const Effect& effect : source.effects) {
                const double size = grams * effect.perGram * source.source.u;
                squares[indexOf(effect.component)] += size * size;
                weighted[indexOf(effect.component)] +=
                    weightedTerm(size * size, source.source.freedom);
            }
    }
    PerComponent<Uncertainty> result{};
    for (std::size_t k = 0; k < kComponentCount; ++k) result[k] = fromSums(squares[k], weighted[k]);
    return result;
}

std::vector<Contribution> contributionsTo(Component component, const Block& block,
                                          const std::vector<Composition>& compositions) {
    std::vector<Contribution> all;
    for (std::size_t s = 0; s < block.sources.size(); ++s) {
        const double sensitivity = block.sensitivities[s * kComponentCount + indexOf(component)];
        if (sensitivity != 0) all.push_back({block.sources[s], sensitivity});
    }
    for (const Block::FoodPart& part : block.foods)
        for (const CompositionSource& source : compositions[part.food].sources)
            for (const Effect& effect : source.effects)
                if (effect.component == component)
                    all.push_back({source.source, part.grams * block.scale * effect.perGram});
    return all;
}

}  // namespace nettare
