#pragma once

#include <span>
#include <vector>

#include "core/simulation/figure_plan.h"

namespace nettare {

/// The sums of a plan for many trials at once: one row a sum, one column a trial.
class SumTile {
public:
    SumTile(const FigurePlan& plan, std::size_t trials);

    /// Back to where no source deviates.
    void reset();
    /// Moves a source's sums by its deviation in each trial, in the source's unit.
    void move(const FigurePlan::DrawnSource& source, std::span<const double> deviations);
    /// The figure of each trial.
    void figures(std::span<double> values) const;

private:
    [[nodiscard]] const double* row(std::size_t sum) const { return &numbers_[sum * trials_]; }
    void addProduct(const FigurePlan::Product& product, std::span<double> values) const;

    const FigurePlan& plan_;
    std::size_t trials_;
    std::vector<double> numbers_;
};

/// The figure where no source deviates.
[[nodiscard]] double valueWithoutDeviation(const FigurePlan& plan);

}  // namespace nettare
