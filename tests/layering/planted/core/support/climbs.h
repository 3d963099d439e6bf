// Planted: an include that climbs.
#include "../quantity/mass.h"
