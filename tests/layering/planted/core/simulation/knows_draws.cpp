// Planted: a second place for draws.
#include <boost/random/mersenne_twister.hpp>
