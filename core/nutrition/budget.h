#pragma once

#include <limits>
#include <string>
#include <vector>

#include "core/nutrition/block.h"

namespace nettare {

/// A standard uncertainty with its effective degrees of freedom.
struct Uncertainty {
    double u = 0;
    double freedom = std::numeric_limits<double>::infinity();
};

/// One input of combine(): sensitivity, standard uncertainty, degrees of freedom, and the pool of
/// terms that share one estimated s.
struct BudgetTerm {
    double sensitivity = 1;
    double u = 0;
    double freedom = std::numeric_limits<double>::infinity();
    std::size_t pool = 0;
};

/// Law of propagation for independent sources, u^2 = sum (c u)^2 (JCGM 100:2008, 5.1.2), and
/// effective degrees of freedom by Welch-Satterthwaite (G.4.1), nu = u^4 / sum (v_p^2 / nu_p),
/// where terms of one pool enter as one term v_p. Infinite where no term has finite freedom.
[[nodiscard]] Uncertainty combine(const std::vector<BudgetTerm>& terms);

/// The same for one linear form, with the pools of its sources.
[[nodiscard]] Uncertainty uncertaintyOf(const LinearForm& form);

/// The same for every component of a block.
[[nodiscard]] PerComponent<Uncertainty> budgetOf(const Block& block,
                                                 const std::vector<Composition>& compositions);

/// What one source does to one component of a block: sensitivity per unit of the source, and its u
/// for the meaning of the block.
struct Contribution {
    Source source;
    double sensitivity = 0;

    [[nodiscard]] double share() const { return sensitivity * source.u * sensitivity * source.u; }
};

/// All sources that move a component, in the block's order.
[[nodiscard]] std::vector<Contribution> contributionsTo(
    Component component, const Block& block, const std::vector<Composition>& compositions);

}  // namespace nettare
