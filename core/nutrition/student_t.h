#pragma once

namespace nettare {

/// Quantile of Student's t for that many degrees of freedom (> 0, infinity for the normal), by
/// Boost.Math.
[[nodiscard]] double studentT(double probability, double freedom);

/// Probability of a value of at most t, 0 to 1, by Boost.Math.
[[nodiscard]] double studentProbability(double t, double freedom);

/// Factor of a 95 % interval, t(0.975; freedom), at four significant digits, so that it is the same
/// number on every compiler.
[[nodiscard]] double coverageFactor(double freedom);

}  // namespace nettare
