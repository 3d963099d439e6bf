// Planted: a second place for statistics.
#include <boost/math/distributions/students_t.hpp>
