#pragma once

#include <functional>

namespace nettare {

/// t(0.975; freedom); handed in, so that this folder needs no quantiles of its own.
using CoverageOf = std::function<double(double freedom)>;

/// Student's t, handed in likewise: core/nutrition/judged_series.h fills it in.
struct StudentLaw {
    CoverageOf coverage;  ///< factor of a 95 % interval
    std::function<double(double probability, double freedom)> quantile;
};

}  // namespace nettare
