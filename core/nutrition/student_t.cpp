#include "core/nutrition/student_t.h"

#include <array>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/quantity/decimal.h"

namespace nettare {

namespace {

/// t(0.975; nu) as a Chebyshev series in 1 / nu, through values of Boost.Math at the zeros of the
/// last polynomial (interpolation at Chebyshev points; from memory).
class QuantileSeries {
public:
    static constexpr double kLeastFreedom = 2;

    QuantileSeries() {
        std::array<double, kTerms> values{};
        for (std::size_t i = 0; i < kTerms; ++i)
            values[i] = studentT(0.975, 1 / (kHalfRange * (1 + std::cos(angle(i)))));
        for (std::size_t n = 0; n < kTerms; ++n) {
            double sum = 0;
            for (std::size_t i = 0; i < kTerms; ++i)
                sum += values[i] * std::cos(static_cast<double>(n) * angle(i));
            terms_[n] = sum * 2 / kTerms;
        }
    }

    /// Freedom is kLeastFreedom or more. The sum by Clenshaw's recurrence.
    [[nodiscard]] double quantile(double freedom) const {
        const double x = 1 / freedom / kHalfRange - 1;
        double next = 0;
        double afterNext = 0;
        for (std::size_t n = kTerms - 1; n > 0; --n)
            afterNext = std::exchange(next, 2 * x * next - afterNext + terms_[n]);
        return x * next - afterNext + terms_[0] / 2;
    }

private:
    static constexpr std::size_t kTerms = 24;
    static constexpr double kHalfRange = 1 / kLeastFreedom / 2;

    static double angle(std::size_t i) {
        return std::numbers::pi * (static_cast<double>(i) + 0.5) / kTerms;
    }

    std::array<double, kTerms> terms_{};
};

}  // namespace

double studentT(double probability, double freedom) {
    if (std::isinf(freedom))
        return boost::math::quantile(boost::math::normal_distribution<double>{}, probability);
    return boost::math::quantile(boost::math::students_t_distribution<double>{freedom},
                                 probability);
}

double studentProbability(double t, double freedom) {
    if (std::isinf(freedom)) return boost::math::cdf(boost::math::normal_distribution<double>{}, t);
    return boost::math::cdf(boost::math::students_t_distribution<double>{freedom}, t);
}

// Four significant digits: the quantile's last bits may differ between compilers and libraries.
// Asking Boost.Math takes some microseconds, as long as all else that a figure needs; the series
// answers wherever its own error cannot move the fourth digit.
double coverageFactor(double freedom) {
    constexpr double kDoubt = 1e-4;  // of one step; the series is off by a millionth of that
    if (freedom >= QuantileSeries::kLeastFreedom) {
        static const QuantileSeries kSeries;
        const double steps = kSeries.quantile(freedom) * 1000;
        const double nearest = std::floor(steps + 0.5);
        if (std::fabs(steps - nearest) < 0.5 - kDoubt) return nearest / 1000;
    }
    const double t = studentT(0.975, freedom);
    int digitsBefore = 0;
    for (double rest = t; rest >= 1; rest /= 10) ++digitsBefore;
    return roundedToStep(Decimal::fromDouble(t), Decimal{1, digitsBefore - 4}).value();
}

}  // namespace nettare
