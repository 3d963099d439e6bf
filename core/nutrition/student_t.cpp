#include "core/nutrition/student_t.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "core/quantity/decimal.h"

namespace nettare {

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
double coverageFactor(double freedom) {
    const double t = studentT(0.975, freedom);
    int digitsBefore = 0;
    for (double rest = t; rest >= 1; rest /= 10) ++digitsBefore;
    return roundedToStep(Decimal::fromDouble(t), Decimal{1, digitsBefore - 4}).value();
}

}  // namespace nettare
