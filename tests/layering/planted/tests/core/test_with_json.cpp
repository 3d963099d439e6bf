// Planted: a test of core that reads JSON on its own.
#include <valijson/validator.hpp>
