// Planted: quantiles where draws are made.
#include <boost/math/distributions/normal.hpp>
