// Planted: differences from a second place.
#include <dtl/dtl.hpp>
