#pragma once

#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// The numbers that a budget reads, laid out flat: the least work that gives its u.
class PlainPass {
public:
    PlainPass(const Block& block, const std::vector<Composition>& compositions);

    /// Sum of (c u)^2 for every component: no pools, no degrees of freedom.
    [[nodiscard]] PerComponent<double> squares() const;

    /// Sensitivities that squares() reads.
    [[nodiscard]] std::size_t numbers() const { return rows_.size() + effects_.size(); }

private:
    struct Part {
        std::size_t component;
        double sensitivity;
        double u;
    };
    std::vector<double> rows_;  ///< [source][component]
    std::vector<double> rowU_;
    std::vector<Part> effects_;
};

}  // namespace nettare
